using System.Globalization;

namespace Proveout.Workshop;

/// <summary>The controller with what hangs on it: motors, stops, hot ends, temperatures, valves and fans.</summary>
internal sealed class StartingBoard(StartingFile file, StartAnswers answers, StartingPower power)
{
    private static readonly string[] PhaseColours = ["black", "white", "red", "grey"];
    private static readonly string[] Phases = ["1A", "1B", "2A", "2B"];
    private static readonly string[] DriverAxes = ["X", "Y", "Z", "A"];

    /// <summary>A lead at an output for heaters, by the fuse that stands before it.</summary>
    public static Lead OutputLead(StartAnswers answers, int millimetres, string route) =>
        new(Lead.SectionBehind(answers.HasMains ? 10 : 5), millimetres, route);

    /// <summary>Writes the board and what hangs on it.</summary>
    /// <param name="fed">Where motors and heaters get their power, once the emergency stop lets them.</param>
    /// <param name="plate">The plate; null when there is none.</param>
    public void Write(Branch fed, StartingPlate? plate)
    {
        file.Part("A1", answers.Board.Type, "Motion controller", "the board's terminals and what a meter reads at them are those of a common kind; write yours as a part type of its own.", Jumpers());
        Feed(fed);
        for (var motor = 1; motor <= answers.Motors; motor++)
            Motor(motor);
        file.Group("Stops: opening contacts to 0 V, so that a broken wire reads as operated");
        for (var axis = 1; axis <= answers.Axes; axis++)
            Stop(axis);
        Heat(plate);
        for (var valve = 1; valve <= answers.Valves; valve++)
            Valve(valve);
        Fans();
    }

    private string[] Jumpers() => answers.Board.HasOwnDrivers ? []
        : answers.Board == StartBoard.Seven ? [$"jumpers: {{FAN-BANK-1: {answers.FanVolts} V, FAN-BANK-2: {answers.FanVolts} V}}"]
        : [$"jumpers: {{FAN-BANK-1: {answers.FanVolts} V}}"];

    private void Feed(Branch fed)
    {
        file.Group("Power of the controller");
        if (answers.Board == StartBoard.Four)
        {
            Pair(fed.Terminal, "A1.V+", "A1.V-", fed);
            return;
        }

        if (answers.Board == StartBoard.Seven)
        {
            Pair(fed.Terminal, "A1.VP+", "A1.VP-", fed);
            Pair(power.Logic.Terminal, "A1.VL+", "A1.VL-", power.Logic);
            return;
        }

        Pair(power.Logic.Terminal, "A1.24V", "A1.0V", power.Logic);
        file.Part("X10", "lever-terminal-5", "24 V of the drivers");
        file.Wire(fed.Terminal, "X10.1", fed.Lead(250), "red");
    }

    private void Pair(string fed, string plus, string minus, Branch branch)
    {
        file.Wire(fed, plus, branch.Lead(250), "red");
        file.Wire(power.Zero(), minus, branch.Lead(250), "black");
    }

    private void Motor(int motor)
    {
        var isFirst = motor == 1;
        var name = motor <= answers.Axes ? $"Motor of axis {motor}" : $"Further motor {motor - answers.Axes}";
        var route = isFirst ? StartingRoutes.Low : StartingRoutes.ToHead;
        var guess = motor <= answers.Axes
            ? "size of the motor; give the resistance of its coils with values, as on its plate."
            : "size of the motor, and what it moves: a second motor of an axis, or a feeder.";
        file.Part($"M{motor}", answers.Board.HasOwnDrivers ? "stepper-57-76" : "stepper-42-40", name, guess);
        file.Group(name, isFirst ? "this motor stands still, and the others are reached through the chain. Lengths of all motor leads." : "");
        if (answers.Board.HasOwnDrivers)
            Driver(motor);
        var driver = answers.Board.HasOwnDrivers ? $"A{motor + 1}." : $"A1.M{motor - 1}-";
        var lead = new Lead(answers.Board.HasOwnDrivers ? "0.75" : "0.34", isFirst ? 1000 : 1500, route);
        for (var phase = 0; phase < Phases.Length; phase++)
            file.Wire($"{driver}{Phases[phase]}", $"M{motor}.{Phases[phase]}", lead, PhaseColours[phase]);
    }

    private void Driver(int motor)
    {
        var (driver, axis, star) = ($"A{motor + 1}", DriverAxes[motor - 1], $"X{motor + 10}");
        var signal = new Lead("0.25", 200, StartingRoutes.Low);
        file.Part(driver, "stepper-driver", $"Driver of motor {motor}");
        file.Part(star, "lever-terminal-5", $"5 V of driver {driver}");
        var feed = new Lead("1.5", 250, StartingRoutes.Low);
        file.Wire($"X10.{motor + 1}", $"{driver}.V+", feed, "red");
        file.Wire(power.Zero(), $"{driver}.V-", feed, "black");
        file.Wire($"A1.{axis}-5V", $"{star}.1", signal, "red");
        foreach (var (clamp, input, colour) in new[] { (2, "STEP", "white"), (3, "DIR", "grey"), (4, "ENA", "violet") })
        {
            file.Wire($"{star}.{clamp}", $"{driver}.{input}+", signal, "red");
            file.Wire($"A1.{axis}-{input}", $"{driver}.{input}-", signal, colour);
        }
    }

    private void Stop(int axis)
    {
        var lead = new Lead("0.25", axis == 1 ? 1000 : 1500, axis == 1 ? StartingRoutes.Low : StartingRoutes.ToHead);
        file.Part($"B{axis + 10}", "micro-switch", $"Stop of axis {axis}", axis == 1 ? "stops are snap-action switches on their opening contact." : "");
        file.Wire($"A1.STOP{axis - 1}-0V", $"B{axis + 10}.C", lead, "black");
        file.Wire($"A1.STOP{axis - 1}-S", $"B{axis + 10}.NC", lead, "white");
    }

    private void Heat(StartingPlate? plate)
    {
        for (var hotEnd = 1; hotEnd <= answers.HotEnds; hotEnd++)
            HotEnd(hotEnd);
        if (plate is null)
            return;
        file.Group("Temperature of the plate");
        Temperature(answers.HotEnds, plate.Sensor, $"{StartingRoutes.Low}, {StartingRoutes.PlateSensor}");
    }

    private void HotEnd(int hotEnd)
    {
        var (heater, sensor, output) = ($"E{hotEnd + 1}", $"B{hotEnd + 1}", answers.Board.Heats[hotEnd - 1]);
        var ohms = (24 * 24 / answers.HotEndWatts).ToString("0.##", CultureInfo.InvariantCulture);
        file.Part(heater, answers.HotEndWatts > 40 ? "cartridge-heater-24-60" : "cartridge-heater-24-40", $"Hot end heater {hotEnd}", "resistance from 24 V and power; measure it.", $"values: {{element: {ohms} ohm +-10 %}}");
        file.Part(sensor, StartingPlate.Type(answers.Sensor), $"Hot end temperature {hotEnd}");
        file.Group($"Hot end {hotEnd}");
        file.Wire($"A1.{output}+", $"{heater}.1", OutputLead(answers, 1500, StartingRoutes.ToHead), "red");
        file.Wire($"A1.{output}-", $"{heater}.2", OutputLead(answers, 1500, StartingRoutes.ToHead), "white");
        Temperature(hotEnd - 1, ($"{sensor}.1", $"{sensor}.2"), StartingRoutes.ToHead);
    }

    private void Valve(int valve)
    {
        var (designation, output) = ($"Q{valve + 10}", answers.FreeOutputs[valve - 1]);
        file.Part(designation, "solenoid-valve-24", $"Valve {valve}", valve == 1 ? "valves shut without power; each output has a diode against the surge of its coil, or the valve carries one." : "");
        file.Group($"Valve {valve}");
        file.Wire($"A1.{output}+", $"{designation}.1", OutputLead(answers, 1500, StartingRoutes.ToHead), "red");
        file.Wire($"A1.{output}-", $"{designation}.2", OutputLead(answers, 1500, StartingRoutes.ToHead), "white");
    }

    private void Temperature(int input, (string One, string Two) sensor, string route)
    {
        var lead = new Lead("0.22", 1500, route);
        file.Wire($"A1.TEMP{input}-S", sensor.One, lead, "white");
        file.Wire($"A1.TEMP{input}-0V", sensor.Two, lead, "black");
    }

    private void Fans()
    {
        if (answers.Fans == 0)
            return;
        if (answers.Board.HasOwnDrivers)
            FanLine();
        for (var fan = 1; fan <= answers.Fans; fan++)
        {
            file.Part($"G{fan}", $"fan-{answers.FanVolts}-40", $"Fan {fan}", fan == 1 ? "fans of 40 mm, the first at the electronics, the others on the head." : "");
            var lead = new Lead("0.34", fan == 1 ? 300 : 1500, fan == 1 ? StartingRoutes.Low : StartingRoutes.ToHead);
            file.Wire(answers.Board.HasOwnDrivers ? $"X15.{fan + 1}" : $"A1.FAN{fan - 1}+", $"G{fan}.+", lead, "red");
            file.Wire(answers.Board.HasOwnDrivers ? $"X16.{fan + 1}" : $"A1.FAN{fan - 1}-", $"G{fan}.-", lead, "black");
        }
    }

    private void FanLine()
    {
        file.Part("X15", "lever-terminal-5", "24 V of the fans");
        file.Part("X16", "lever-terminal-5", "0 V of the fans");
        file.Group("Fans, on whenever 24 V is there");
        Pair(power.Fans.Terminal, "X15.1", "X16.1", power.Fans);
    }
}
