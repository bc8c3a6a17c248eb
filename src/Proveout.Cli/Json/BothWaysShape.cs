using Proveout.Engine.Electrical;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What a meter shows between two terminals, either way round.</summary>
internal sealed record BothWaysShape(string Format, string Machine, SetUpShape SetUp, IReadOnlyList<ExpectedReadingShape> Readings)
{
    public static BothWaysShape Of(string machine, BothWays both) =>
        new("proveout-readings-between 1", machine, SetUpShape.Of(both.SetUp), [ExpectedReadingShape.Of(both.One), ExpectedReadingShape.Of(both.Other)]);
}

/// <summary>One way round: ohms on the resistance setting, volts on the diode test.</summary>
internal sealed record ExpectedReadingShape(
    string Red, string Black, IntervalShape Ohms, string OhmsWords, IntervalShape DiodeVolts, string DiodeWords, string Why)
{
    public static ExpectedReadingShape Of(ExpectedReading reading) => new(
        reading.Red.ToString(),
        reading.Black.ToString(),
        IntervalShape.Of(reading.Ohms),
        reading.OhmsInWords,
        IntervalShape.Of(reading.DiodeVolts),
        reading.DiodeInWords,
        reading.Reason);
}
