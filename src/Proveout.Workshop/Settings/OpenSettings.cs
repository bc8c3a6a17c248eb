namespace Proveout.Workshop;

/// <summary>What only a measurement on the build can settle.</summary>
internal sealed class OpenSettings : ISettingSource
{
    private static readonly ExpectedMeasurement[] Expected =
    [
        new("tension", "Tension of the belts", "Pluck a span and record it: `proveout tension`.", machine => machine.Design.Motion.Belts.Count > 0),
        new("frame", "Squareness of the frame", "Measure the diagonals: `proveout frame`.", machine => machine.Design.Motion.Axes.Count > 1),
        new("level", "Level and shape of the plate", "Probe it cold and hot: `proveout level`.", machine => machine.Design.Heated.Any(body => body.Plate is not null)),
        new("heat-log", "Guards and gains by a heater's own log", "Log its first warm-up: `proveout heat-log`.", machine => machine.Design.Heated.Count > 0),
        new("resonance", "Input shaper and acceleration of each axis", "Record an accelerometer on the moving part: `proveout resonance`.", machine => machine.Motors.Count > 0),
        new("piece", "Feed, flow, size and skew", "Make the first test piece and measure it: `proveout piece`.", machine => machine.Design.Motion.Axes.Count > 1),
        new("motor", "Speed and acceleration of the axes", "Give the plate of each motor and what it moves: `proveout motor`.", machine => machine.Motors.Count > 0),
    ];

    /// <summary>Identifier of the setting that an analysis settles.</summary>
    public static string IdOf(string analysis) => $"open-{analysis}";

    public IEnumerable<SettingGroup> Of(SettingsCase machine) =>
    [
        new(
            "open",
            "To be measured",
            "What no drawing tells. Each line goes when its measurement is kept in the record of the build.",
            [
                .. Expected
                    .Where(expected => expected.Applies(machine))
                    .Select(expected => new Setting(IdOf(expected.Analysis), expected.Name, "", SettingState.Open, "Not measured yet.", expected.How)),
            ]),
    ];
}
