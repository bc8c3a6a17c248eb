using System.Globalization;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Heat;

/// <summary>What every mistake with a heater shows in the log of its first warm-up, in the form that plan and diagnosis work on.</summary>
public static class HeaterCampaign
{
    /// <summary>Identifiers of the readings, in order: off, early rise, rise of others, time, power to hold.</summary>
    public static IReadOnlyList<string> CheckIds { get; } = ["rise-while-off", "early-rise", "rise-of-others", "time-to-end", "hold-share"];

    private static readonly string[] Cautions =
    [
        "The heater may be wired wrong: stay beside it, one hand on the switch, and switch off when anything smells, glows or smokes.",
        "Its independent thermal cut-off is fitted and was tested; nothing that burns lies near.",
    ];

    private static readonly SetUp Off = new("heater-told-off", "Energised from cold, heater told to stay off", ["Let everything cool down to the room.", "Energise, and leave the heater off."], [.. Cautions], 120) { Phase = Phase.InUse };

    private static readonly SetUp Full = new("full-output", "Full output from cold to the target", ["Let everything cool down to the room.", "Ask for the target, and log time, what is shown, and output until it is held."], [.. Cautions], 300) { Phase = Phase.InUse };

    /// <summary>Simulates every mistake in the first warm-up, for every value that sound parts may have.</summary>
    /// <param name="design">The heater as designed; it reaches its target within a day.</param>
    public static FaultDictionary Of(HeaterDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        var readings = new WarmUpReadings(design);
        var sound = readings.Of(design, heatsWhenOff: false, isSeenElsewhere: false);
        HeaterMistake[] mistakes = [.. HeaterMistakes.Of(design)];
        return new FaultDictionary(
            [Off, Full],
            Checks(design, readings, sound),
            [.. mistakes.Select(mistake => new Fault(mistake.Id, mistake.Kind, mistake.Sentence, [design.Name], mistake.Severity, mistake.Consequence, mistake.Prior, mistake.OtherEvidence))],
            [.. mistakes.Select(mistake => ResponseOf(readings.Of(mistake.Left, mistake.HeatsWhenOff, mistake.IsSeenElsewhere), sound))]);
    }

    private static Check[] Checks(HeaterDesign design, WarmUpReadings readings, ReadingInterval[] sound)
    {
        string Seconds(double seconds) => string.Create(CultureInfo.InvariantCulture, $"{seconds:0} s");
        string Celsius(double celsius) => string.Create(CultureInfo.InvariantCulture, $"{celsius:0} °C");
        Check Make(int index, string kind, SetUp setUp, string title, string instruction, string unit, string why, double cost) =>
            new(CheckIds[index], kind, setUp.Id, title, instruction, [], unit, sound[index], why, cost);

        const string FromModel = "Power, heat capacity, loss and sensor of the design, each with its tolerance.";
        return
        [
            Make(0, "temperature-rise", Off, "Rise while told to stay off", $"Wait {Seconds(readings.EarlySeconds)} and take by how much the temperature shown rose.", "K", "Nothing heats.", readings.EarlySeconds),
            Make(1, "temperature-rise", Full, "Rise at full output", $"Take by how much the temperature shown rose in the first {Seconds(readings.EarlySeconds)}.", "K", FromModel, readings.EarlySeconds),
            Make(2, "temperature-rise", Full, "Rise of the other channels", $"Take the largest rise of any other channel in the same {Seconds(readings.EarlySeconds)}.", "K", "A body nearby is warmed by a few kelvin at most.", readings.EarlySeconds),
            Make(3, "time", Full, $"Time to {Celsius(readings.EndCelsius)}", $"Take the time until {Celsius(readings.EndCelsius)} are shown; say never when that is not so after {Seconds(readings.PatienceSeconds)}.", "s", FromModel, WarmUp.SlowestSeconds(design)),
            Make(4, "share", Full, $"Output that holds {Celsius(design.TargetCelsius)}", "Once it is steady, take the mean output over some minutes, in percent; say over when it is 100 and the target is not held.", "%", "Loss at the target over power.", 2 * WarmUp.SlowestSeconds(design)),
        ];
    }

    private static FaultResponse ResponseOf(ReadingInterval[] left, ReadingInterval[] sound)
    {
        int[] changed = [.. Enumerable.Range(0, sound.Length).Where(index => left[index] != sound[index])];
        return new FaultResponse(changed, [.. changed.Select(index => left[index])]);
    }
}
