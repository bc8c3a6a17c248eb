using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>A machine's conductors as a table for a spreadsheet.</summary>
public static class WireTable
{
    /// <summary>The conductors as comma-separated values, as they are written in the machine's files.</summary>
    /// <param name="files">The machine's files.</param>
    public static string Write(IReadOnlyList<SourceText> files) => CsvText.Write(
    [
        [WireColumns.Wire, .. WireColumns.All.Select(column => column.Heading)],
        .. from conductor in FieldTexts.OfSection(files, EditedThing.Conductors)
           select (IEnumerable<string>)[
               GuardedCell.Out(conductor.Name),
               .. WireColumns.All.Select(column => GuardedCell.Out(WireColumns.CellOf(column.Field, conductor.Texts.GetValueOrDefault(column.Field.Path, "")))),
           ],
    ]);
}
