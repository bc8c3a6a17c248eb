using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>What was measured on a build.</summary>
internal static class MeasuredSettings
{
    /// <summary>Of the latest measurement of each kind: what is to be set, then what was found besides.</summary>
    public static IReadOnlyList<SettingGroup> Of(IReadOnlyList<KeptMeasurement> measurements) =>
    [
        new("to-set", "To set, as measured on this build", "From the latest measurement of each kind. Where a line above names the same thing as computed, this one counts.", [.. Taken(measurements, isToSet: true)]),
        new("measured", "Measured on this build", "The latest measurement of each kind, with expanded uncertainty.", [.. Taken(measurements, isToSet: false)]),
    ];

    private static IEnumerable<Setting> Taken(IReadOnlyList<KeptMeasurement> measurements, bool isToSet) =>
        from measurement in measurements.GroupBy(kept => (kept.Analysis, kept.Title)).Select(alike => alike.Last())
        from figure in measurement.Results.Index()
        where figure.Item.Name.StartsWith(Measurements.ToSet, StringComparison.Ordinal) == isToSet
        select new Setting(
            PlainNames.Of($"{measurement.Analysis} {measurement.Sequence} {figure.Index}"),
            $"{measurement.Title}: {(isToSet ? figure.Item.Name[Measurements.ToSet.Length..] : figure.Item.Name)}",
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
