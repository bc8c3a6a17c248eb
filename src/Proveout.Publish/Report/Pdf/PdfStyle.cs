using PdfSharp.Drawing;

namespace Proveout.Publish.Report;

/// <summary>How a run of text looks on paper.</summary>
internal sealed class PdfStyle(double size, bool bold, XColor colour)
{
    /// <summary>Colour of text and strokes.</summary>
    public static readonly XColor Ink = XColor.FromArgb(0x1d, 0x21, 0x26);

    /// <summary>Colour of what is said beside.</summary>
    public static readonly XColor Soft = XColor.FromArgb(0x50, 0x56, 0x5e);

    /// <summary>Colour of rules.</summary>
    public static readonly XColor Rule = XColor.FromArgb(0xc4, 0xc0, 0xb8);

    /// <summary>Colour behind headings of tables.</summary>
    public static readonly XColor Band = XColor.FromArgb(0xf0, 0xed, 0xe5);

    /// <summary>Name of the machine.</summary>
    public static readonly PdfStyle Title = new(20, true, Ink);

    /// <summary>Heading of a section.</summary>
    public static readonly PdfStyle Heading = new(13, true, Ink);

    /// <summary>Heading within a section.</summary>
    public static readonly PdfStyle SubHeading = new(10.5, true, Ink);

    /// <summary>Running text.</summary>
    public static readonly PdfStyle Body = new(9.5, false, Ink);

    /// <summary>Running text that must not be missed.</summary>
    public static readonly PdfStyle Strong = new(9.5, true, Ink);

    /// <summary>Text of a table.</summary>
    public static readonly PdfStyle Cell = new(8.5, false, Ink);

    /// <summary>Text of a table that names its row.</summary>
    public static readonly PdfStyle CellStrong = new(8.5, true, Ink);

    /// <summary>What is said beside.</summary>
    public static readonly PdfStyle Note = new(7.5, false, Soft);

    /// <summary>Headings of columns.</summary>
    public static readonly PdfStyle Column = new(7.5, true, Soft);

    /// <summary>The font.</summary>
    public XFont Font { get; } = ReportFonts.Make(size, bold);

    /// <summary>What it is painted with.</summary>
    public XBrush Brush { get; } = new XSolidBrush(colour);

    /// <summary>From one base line to the next, in points.</summary>
    public double LineHeight { get; } = size * 1.34;

    /// <summary>From the upper edge of a line to its base line, in points.</summary>
    public double Ascent { get; } = size * 1.02;
}
