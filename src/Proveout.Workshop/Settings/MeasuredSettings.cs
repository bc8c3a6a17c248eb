using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>What was measured on a build.</summary>
internal static class MeasuredSettings
{
    /// <summary>The latest measurement of each kind.</summary>
    public static SettingGroup Of(IReadOnlyList<KeptMeasurement> measurements) => new(
        "measured",
        "Measured on this build",
        "The latest measurement of each kind, with expanded uncertainty (coverage factor 2).",
        [.. Taken(measurements)]);

    private static IEnumerable<Setting> Taken(IReadOnlyList<KeptMeasurement> measurements) =>
        from measurement in measurements.GroupBy(kept => (kept.Analysis, kept.Title)).Select(alike => alike.Last())
        from figure in measurement.Results.Index()
        select new Setting(
            PlainNames.Of($"{measurement.Analysis} {measurement.Sequence} {figure.Index}"),
            $"{measurement.Title}: {figure.Item.Name}",
            Words(figure.Item),
            SettingState.Measured,
            FormattableString.Invariant($"Entry {measurement.Sequence} of the record, {measurement.When:yyyy-MM-dd}, {measurement.Person}."),
            "The same measurement done again.")
        {
            Number = figure.Item.Value,
            Expanded = figure.Item.Expanded > 0 ? figure.Item.Expanded : null,
            Unit = figure.Item.Unit,
        };

    private static string Words(KeptFigure figure) => figure.Expanded > 0
        ? SensibleDigits.Of(Uncertain.WithExpanded(figure.Value, figure.Expanded), figure.Unit)
        : SettingWords.Figure(figure.Value, figure.Unit);
}
