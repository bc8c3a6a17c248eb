using System.Xml.Linq;
using Proveout.Publish.Drawings;
using Proveout.Publish.Report;

namespace Proveout.Publish.Books;

/// <summary>Paints sheets of ours on pages of their own, turned so that their long side stands upright: as large as A4 lets them be, low ones one below the other.</summary>
internal static class PdfDrawing
{
    private static readonly double Scale = Math.Min(PdfSheet.FullHeight / Paper.Width, PdfSheet.Width / Paper.Height);

    /// <summary>Paints sheets that follow one another.</summary>
    public static void Write(PdfSheet sheet, IReadOnlyList<DrawingSheet> drawings)
    {
        var usedMm = Paper.Height;
        foreach (var drawing in drawings)
        {
            if (usedMm + drawing.HeightMm > Paper.Height)
            {
                sheet.NewPage();
                usedMm = 0;
            }

            Paint(sheet, drawing, usedMm);
            usedMm += drawing.HeightMm;
        }

        // What follows starts a page of its own.
        sheet.Y += PdfSheet.FullHeight;
    }

    private static void Paint(PdfSheet sheet, DrawingSheet drawing, double fromMm)
    {
        var graphics = sheet.Graphics;
        var state = graphics.Save();
        graphics.TranslateTransform(PdfSheet.Left + (PdfSheet.Width + (Paper.Height * Scale)) / 2, sheet.Y);
        graphics.RotateTransform(90);
        graphics.ScaleTransform(Scale);
        graphics.TranslateTransform(0, fromMm);
        foreach (var element in XElement.Parse(drawing.Svg).Elements())
            new PdfShapes(graphics).Paint(element);
        graphics.Restore(state);
    }
}
