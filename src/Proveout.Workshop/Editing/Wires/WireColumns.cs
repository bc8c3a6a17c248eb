using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>The columns of a wire list that goes out to a spreadsheet and comes back.</summary>
public static class WireColumns
{
    /// <summary>Heading of the column of names.</summary>
    public const string Wire = "Wire";

    /// <summary>Each further column with the field that it holds.</summary>
    public static IReadOnlyList<(string Heading, RowField Field)> All { get; } =
    [
        .. from pair in new[]
           {
               ("From", "from"), ("To", "to"), ("Cross-section", "section"), ("Colour", "colour"), ("Length", "length"), ("Through", "route"), ("Strands", "strands"),
               ("First end", "from-end"), ("Second end", "to-end"), ("Insulation", "insulation"), ("Diameter", "diameter"), ("Cable", "cable"), ("Flexing", "flexing"),
               ("Labelled", "labelled"),
           }
           select (pair.Item1, RowFields.Of(EditedThing.Conductors).Single(field => field.Path == pair.Item2)),
    ];

    /// <summary>The words of a flag in a cell.</summary>
    public static string CellOf(RowField field, string text) => (field.Kind, text) switch
    {
        (RowValue.Flag, "true") => "yes",
        (RowValue.Flag, "false") => "no",
        _ => text,
    };

    /// <summary>The text of a field in the file, from the words of a cell.</summary>
    public static string TextOf(RowField field, string cell) => (field.Kind, cell.ToLowerInvariant()) switch
    {
        (RowValue.Flag, "yes") => "true",
        (RowValue.Flag, "no") => "false",
        _ => cell,
    };
}
