namespace Proveout.Engine.Machine;

/// <summary>Columns of numbers from a text file.</summary>
/// <param name="File">File name as the user gave it.</param>
/// <param name="Columns">The columns, in the order of the file.</param>
/// <param name="Lines">Line of each row in the file, counted from 1.</param>
public sealed record DataTable(string File, IReadOnlyList<DataColumn> Columns, IReadOnlyList<int> Lines)
{
    /// <summary>A column by any of its names, in a unit; adds to the problems what keeps it from being used.</summary>
    /// <param name="unit">Unit of the numbers wanted; empty for plain numbers.</param>
    /// <param name="problems">Gets a diagnostic when there is no such column or its unit is of another kind.</param>
    /// <param name="names">Names it may have, our own first; capitals do not matter.</param>
    public IReadOnlyList<double>? Wanted(string unit, ICollection<Diagnostic> problems, params ReadOnlySpan<string> names)
    {
        ArgumentNullException.ThrowIfNull(problems);
        if (Find(names) is not { } column)
        {
            problems.Add(new Diagnostic("no-such-column", Head, $"There is no column {Quote.Of(names[0])}; the columns are {string.Join(", ", Columns.Select(each => Quote.Of(each.Name)))}.", $"Head the column {Quote.Of(names[0])}{(unit.Length > 0 ? $" or `{names[0]} [{unit}]`" : "")}."));
            return null;
        }

        if (column.In(unit) is { } values)
            return values;
        problems.Add(new Diagnostic("wrong-unit", Head, $"Column {Quote.Of(column.Name)} is in {column.Unit}, which is no unit that {unit} can be made of.", $"Give it in {unit}."));
        return null;
    }

    /// <summary>A column by any of its names; null when there is none.</summary>
    public DataColumn? Find(params ReadOnlySpan<string> names)
    {
        foreach (var name in names)
            foreach (var column in Columns)
                if (column.Name.Equals(name, StringComparison.OrdinalIgnoreCase))
                    return column;
        return null;
    }

    private SourcePlace Head => new(File, 1, 1);
}
