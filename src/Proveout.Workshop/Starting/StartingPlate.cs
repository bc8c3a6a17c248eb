using System.Globalization;

namespace Proveout.Workshop;

/// <summary>A heated plate with its switch, thermal cut-off and sensor.</summary>
internal sealed class StartingPlate(StartingFile file, StartAnswers answers, StartingPower power)
{
    private const string Cool = "the cut-off opens above the warmest plate that is wanted, and is clamped to the plate.";

    private static readonly Lead Branch = new("1.5", 250, StartingRoutes.Mains, IsMains: true);
    private static readonly Lead ToPlate = new("1.5", 700, $"{StartingRoutes.Mains}, {StartingRoutes.PlateMains}", IsMains: true);
    private static readonly Lead AtPlate = new("1.5", 150, StartingRoutes.PlateMains, IsMains: true);

    /// <summary>Writes the plate.</summary>
    /// <param name="command">Output that commands its switch.</param>
    /// <param name="fed">Where its power comes from, once the emergency stop lets it.</param>
    public void Write(string command, string fed)
    {
        if (answers.HasMainsPlate)
            WriteMains(command);
        else
            WriteLow(command, fed);
    }

    /// <summary>Terminals of its sensor.</summary>
    public (string One, string Two) Sensor => answers.HasMainsPlate ? ("E1.T1", "E1.T2") : ("B1.1", "B1.2");

    private void WriteMains(string command)
    {
        file.Part("F3", "circuit-breaker-6", "Plate heater branch");
        file.Part("Q2", "contactor-24v-3", "Plate heater contactor, released by the emergency stop");
        file.Part("Q1", "solid-state-relay-25", "Plate heater relay", "on a heat sink; the review says how warm it gets.");
        file.Part("X7", "lever-terminal-3", "Switched line to the cut-off");
        file.Part("F4", "thermal-cut-off", "Plate thermal cut-off", Cool);
        file.Part("X8", "lever-terminal-3", "Line from the cut-off to the mat");
        file.Part("X9", "lever-terminal-3", "Neutral to the mat");
        file.Part("E1", "mains-silicone-heater", "Plate heater on the metal plate", "resistance from mains voltage and power; measure it.", $"values: {{element: {Ohms(answers.MainsVolts)} ohm +-10 %}}");
        file.Group("Plate heater: breaker, contactor in both poles, contactless relay and cut-off in the line, mat", "the plate stands still; where it moves, its leads are made for flexing and run in a chain of their own.");
        file.Wire("X2.3", "F3.1", new("1.5", 250, StartingRoutes.Mains, IsMains: true), "brown");
        file.Wire("F3.2", "Q2.1", Branch, "brown");
        file.Wire("X3.3", "Q2.3", new("1.5", 250, StartingRoutes.Mains, IsMains: true), "blue");
        file.Wire("Q2.2", "Q1.1", Branch, "brown");
        file.Wire("Q1.2", "X7.1", ToPlate, "black");
        file.Wire("X7.2", "F4.1", AtPlate, "brown");
        file.Wire("F4.2", "X8.1", AtPlate, "brown");
        file.Wire("X8.2", "E1.L", AtPlate, "black");
        file.Wire("Q2.4", "X9.1", ToPlate, "blue");
        file.Wire("X9.2", "E1.N", AtPlate, "blue");
        Command(command, "Q1.3", "Q1.4");
    }

    private void WriteLow(string command, string fed)
    {
        var lead = power.Plate.Lead(700);
        file.Part("Q1", "direct-current-switch-40", "Plate heater switch", "a switch module, because the output of the board does not bear the plate.");
        file.Part("F4", "thermal-cut-off", "Plate thermal cut-off", Cool);
        file.Part("E1", "plate-heater-24", "Plate heater", "resistance from 24 V and power; measure it.", $"values: {{element: {Ohms(24)} ohm +-10 %}}");
        file.Part("B1", Type(answers.Sensor), "Plate temperature");
        file.Group("Plate heater: switch module, cut-off, plate", "the plate stands still; where it moves, its leads are made for flexing and run in a chain.");
        file.Wire(fed, "Q1.IN+", power.Plate.Lead(250), "red");
        file.Wire(power.Zero(), "Q1.IN-", power.Plate.Lead(250), "black");
        file.Wire("Q1.OUT+", "F4.1", lead, "red");
        file.Wire("F4.2", "E1.1", lead, "red");
        file.Wire("Q1.OUT-", "E1.2", lead, "white");
        Command(command, "Q1.C+", "Q1.C-");
    }

    private void Command(string output, string plus, string minus)
    {
        file.Group("Command of the plate's switch");
        file.Wire($"A1.{output}+", plus, StartingBoard.OutputLead(answers, 250, StartingRoutes.Low), "red");
        file.Wire($"A1.{output}-", minus, StartingBoard.OutputLead(answers, 250, StartingRoutes.Low), "white");
    }

    public static string Type(string sensor) => sensor == "pt1000" ? "pt1000" : "ntc-100k";

    private string Ohms(double volts) => (volts * volts / answers.PlateWatts).ToString("0.##", CultureInfo.InvariantCulture);
}
