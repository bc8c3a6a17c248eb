using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Which column of a table holds what.</summary>
/// <param name="Separator">What stands between cells.</param>
/// <param name="Count">How many columns there are.</param>
/// <param name="Time">The column of the time.</param>
/// <param name="SecondsByUnit">One of its unit in s.</param>
/// <param name="Directions">The columns of accelerations with their directions, x before y before z.</param>
/// <param name="AccelerationByUnit">One of their unit in m/s².</param>
/// <param name="AccelerationUnit">The unit as it is written.</param>
internal sealed record SignalColumns(
    char Separator, int Count, int Time, double SecondsByUnit, IReadOnlyList<(string Name, int Column)> Directions, double AccelerationByUnit, string AccelerationUnit)
{
    private const string Example = "Put a line of headings first, such as `time [s]; x [m/s²]; y [m/s²]; z [m/s²]`.";

    /// <summary>Reads the line of headings.</summary>
    /// <param name="line">The line.</param>
    /// <param name="place">Where it stands.</param>
    /// <param name="options">Units for headings that name none.</param>
    public static Outcome<SignalColumns> Of(string line, SourcePlace place, SignalOptions options)
    {
        var dialect = TableDialect.Of(line);
        var cells = dialect.Cells(line);
        if (cells.FirstOrDefault(cell => cell.Number is not null) is { Text: { Length: > 0 } number })
            return Refused("no-headings", place, $"The first line holds the number {Quote.Of(number)} where a heading belongs.", $"{Example} A heading behind `#` is a comment and is not read.");
        SignalHeading[] heads = [.. cells.Select(cell => SignalHeading.Of(cell.Text))];
        List<Diagnostic> problems = [];
        var time = Only(heads, head => head.IsTime, "time", place, problems);
        List<(string Name, int Column)> directions = [];
        foreach (var name in new[] { "x", "y", "z" })
            if (heads.Any(head => head.Direction == name))
                directions.Add((name, Only(heads, head => head.Direction == name, name, place, problems)));
        if (directions.Count == 0)
            problems.Add(new("no-direction", place, $"There is no column of accelerations; the columns are {string.Join(", ", heads.Select(head => Quote.Of(head.Name)))}.", "Head them `x`, `y`, `z` with their unit."));
        if (problems.Count > 0)
            return Outcome.Refused<SignalColumns>(problems);
        var seconds = UnitOf([heads[time]], options.TimeUnit, SignalUnits.Time, SignalUnits.TimeSpellings, place, problems);
        var acceleration = UnitOf([.. directions.Select(direction => heads[direction.Column])], options.AccelerationUnit, SignalUnits.Acceleration, SignalUnits.AccelerationSpellings, place, problems);
        return problems.Count > 0
            ? Outcome.Refused<SignalColumns>(problems)
            : Outcome.Of(new SignalColumns(dialect.Separator, heads.Length, time, seconds.Factor, directions, acceleration.Factor, acceleration.Name));
    }

    private static int Only(SignalHeading[] heads, Predicate<SignalHeading> wanted, string name, SourcePlace place, List<Diagnostic> problems)
    {
        var found = Array.FindIndex(heads, wanted);
        if (found < 0)
            problems.Add(new("no-time", place, $"There is no column {Quote.Of(name)}; the columns are {string.Join(", ", heads.Select(head => Quote.Of(head.Name)))}.", $"Head the column with {Quote.Of(name)} and its unit, such as `time [s]`."));
        else if (Array.FindLastIndex(heads, wanted) != found)
            problems.Add(new("heading-twice", place, $"Two columns are headed {Quote.Of(name)}.", "Rename or remove one of them."));
        return found;
    }

    private static (double Factor, string Name) UnitOf(
        SignalHeading[] heads, string otherwise, Func<string, double?> factorOf, string spellings, SourcePlace place, List<Diagnostic> problems)
    {
        string[] units = [.. heads.Select(head => head.Unit.Length > 0 ? head.Unit : otherwise.Trim()).Distinct(StringComparer.OrdinalIgnoreCase)];
        if (units.FirstOrDefault(unit => unit.Length > 0 && factorOf(unit) is null) is { } unknown)
            problems.Add(new("wrong-unit", place, $"{Quote.Of(unknown)} is no unit of column {Quote.Of(heads[0].Name)}.", $"Write {spellings}."));
        else if (units.Any(unit => unit.Length == 0))
            problems.Add(new("no-unit", place, $"The heading {Quote.Of(heads.First(head => head.Unit.Length == 0).Name)} names no unit, and none was stated.", $"Write it into the heading, such as `{heads[0].Name} [{spellings.Split(',')[0]}]`, or state it beside the file: {spellings}."));
        else if (units.Length > 1)
            problems.Add(new("mixed-units", place, $"The accelerations are headed with different units: {string.Join(", ", units)}.", "Give all of them in one unit."));
        else
            return (factorOf(units[0])!.Value, units[0]);
        return (1, "");
    }

    private static Outcome<SignalColumns> Refused(string rule, SourcePlace place, string message, string mend) =>
        Outcome.Refused<SignalColumns>([new(rule, place, message, mend)]);
}
