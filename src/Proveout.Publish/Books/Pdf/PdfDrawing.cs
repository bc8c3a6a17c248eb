using System.Xml.Linq;
using Proveout.Publish.Drawings;
using Proveout.Publish.Report;

namespace Proveout.Publish.Books;

/// <summary>Paints a sheet of ours on a page of its own, turned so that its long side stands upright: as large as A4 lets it be.</summary>
internal static class PdfDrawing
{
    private static readonly double Scale = Math.Min(PdfSheet.FullHeight / Paper.Width, PdfSheet.Width / Paper.Height);

    /// <summary>Paints it.</summary>
    public static void Write(PdfSheet sheet, DrawingSheet drawing)
    {
        sheet.NewPage();
        var graphics = sheet.Graphics;
        var state = graphics.Save();
        graphics.TranslateTransform(PdfSheet.Left + (PdfSheet.Width + (Paper.Height * Scale)) / 2, sheet.Y);
        graphics.RotateTransform(90);
        graphics.ScaleTransform(Scale);
        foreach (var element in XElement.Parse(drawing.Svg).Elements())
            new PdfShapes(graphics).Paint(element);
        graphics.Restore(state);
        // What follows starts a page of its own.
        sheet.Y += PdfSheet.FullHeight;
    }
}
