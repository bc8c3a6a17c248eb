namespace Proveout.Publish.Schedules;

/// <summary>How labels lie on a sheet of A4 (ISO 216): a plain grid with a margin, to print on sheets of labels or to cut.</summary>
/// <remarks>A label is folded around its wire or slipped under clear sleeve; 60 mm by 17 mm leaves room for text that can be read at arm's length.</remarks>
internal static class LabelSheet
{
    /// <summary>Width of a label.</summary>
    public const double WidthMm = 60;

    /// <summary>Height of a label.</summary>
    public const double HeightMm = 17;

    /// <summary>Margin of the sheet.</summary>
    public const double MarginMm = 12;

    /// <summary>Labels beside each other.</summary>
    public const int Across = 3;

    /// <summary>Labels below each other.</summary>
    public const int Down = 16;

    /// <summary>Edge of the square code.</summary>
    public const double CodeMm = 15;

    /// <summary>Upper left corner of the label with a number on its sheet, from the sheet's upper left corner.</summary>
    public static (double LeftMm, double TopMm) CornerOf(int number) =>
        (MarginMm + (number % Across * (WidthMm + 1)), MarginMm + (number / Across * HeightMm));

    /// <summary>The labels, sheet by sheet.</summary>
    public static IEnumerable<WireLabel[]> Sheets(IEnumerable<WireLabel> labels) => labels.Chunk(Across * Down);
}
