using PdfSharp.Drawing;

namespace Proveout.Publish.Report;

/// <summary>A verdict's shape; its word stands beside it, so that neither colour nor shape is needed alone.</summary>
internal static class PdfVerdict
{
    private const double Radius = 4.2;
    private static readonly XColor Good = XColor.FromArgb(0x1d, 0x6b, 0x45);
    private static readonly XColor Bad = XColor.FromArgb(0xa8, 0x20, 0x1a);
    private static readonly XColor Open = XColor.FromArgb(0x5b, 0x47, 0x00);

    /// <summary>Draws the shape about a middle.</summary>
    public static void Draw(XGraphics graphics, ReportVerdict verdict, double x, double y)
    {
        var pen = new XPen(Colour(verdict), 1.1) { LineCap = XLineCap.Round, LineJoin = XLineJoin.Round };
        if (verdict == ReportVerdict.Fail)
            graphics.DrawRectangle(pen, x - Radius, y - Radius, 2 * Radius, 2 * Radius);
        else if (verdict == ReportVerdict.CannotTell)
            graphics.DrawPolygon(pen, [new(x, y - Radius - 0.6), new(x + Radius + 0.6, y), new(x, y + Radius + 0.6), new(x - Radius - 0.6, y)]);
        else
            graphics.DrawEllipse(pen, x - Radius, y - Radius, 2 * Radius, 2 * Radius);
        foreach (var stroke in Strokes(verdict))
            graphics.DrawLines(pen, [.. stroke.Select(point => new XPoint(x + point.X, y + point.Y))]);
    }

    private static XColor Colour(ReportVerdict verdict) => verdict switch
    {
        ReportVerdict.Pass => Good,
        ReportVerdict.Fail => Bad,
        ReportVerdict.NotDone => PdfStyle.Soft,
        _ => Open,
    };

    private static XPoint[][] Strokes(ReportVerdict verdict) => verdict switch
    {
        ReportVerdict.Pass => [[new(-1.9, 0.2), new(-0.5, 1.6), new(2.1, -1.6)]],
        ReportVerdict.Fail => [[new(-1.8, -1.8), new(1.8, 1.8)], [new(1.8, -1.8), new(-1.8, 1.8)]],
        ReportVerdict.CannotTell => [[new(0, -2), new(0, 0.6)], [new(0, 1.9), new(0, 2)]],
        ReportVerdict.LeftOut => [[new(-2, 0), new(2, 0)]],
        _ => [],
    };
}
