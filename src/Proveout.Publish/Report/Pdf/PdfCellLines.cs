namespace Proveout.Publish.Report;

/// <summary>A cell broken into lines, of which some may have gone to an earlier page.</summary>
internal sealed class PdfCellLines
{
    private const double ShapeWidth = 13;
    private readonly List<PdfRun> _lines;
    private ReportVerdict? _verdict;

    /// <summary>Breaks a cell into lines of a width.</summary>
    public PdfCellLines(PdfCell cell, double width)
    {
        _verdict = cell.Verdict;
        _lines = [.. PdfWrap.Lines(cell.Paragraphs, width - (cell.Verdict is null ? 0 : ShapeWidth))];
        Indent = cell.Verdict is null ? 0 : ShapeWidth;
    }

    private PdfCellLines(IEnumerable<PdfRun> lines, ReportVerdict? verdict, double indent) => (_lines, _verdict, Indent) = ([.. lines], verdict, indent);

    /// <summary>Height of the lines in points.</summary>
    public double Height => _lines.Sum(line => line.Style.LineHeight);

    private double Indent { get; }

    /// <summary>Takes away the lines that fit a height.</summary>
    public PdfCellLines Take(double height)
    {
        var count = 0;
        for (var used = 0.0; count < _lines.Count && (used += _lines[count].Style.LineHeight) <= height;)
            count++;
        var taken = new PdfCellLines(_lines.Take(count), _verdict, Indent);
        _lines.RemoveRange(0, count);
        _verdict = null;
        return taken;
    }

    /// <summary>Draws the lines downwards from the sheet's current height.</summary>
    public void Draw(PdfSheet sheet, double x)
    {
        if (_verdict is { } verdict)
            PdfVerdict.Draw(sheet.Graphics, verdict, x + 4.5, sheet.Y + (PdfStyle.Cell.LineHeight / 2));
        foreach (var line in _lines)
        {
            sheet.DrawLine(line, x + Indent);
            sheet.Y += line.Style.LineHeight;
        }
    }
}
