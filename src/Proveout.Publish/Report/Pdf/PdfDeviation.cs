using PdfSharp.Drawing;

namespace Proveout.Publish.Report;

/// <summary>Writes a deviation with its photograph.</summary>
internal sealed class PdfDeviation(PdfSheet sheet, ReportDeviation deviation)
{
    private const double WidestPhoto = 300;
    private const double TallestPhoto = 220;

    /// <summary>Writes it.</summary>
    public void Write()
    {
        sheet.Write(deviation.Subject.Length == 0 ? deviation.Text : $"{deviation.Subject}: {deviation.Text}", PdfStyle.Body);
        sheet.Write($"{deviation.Person}, {ReportWords.Of(deviation.When)}", PdfStyle.Note);
        if (deviation.Photo is { } photo)
            WritePhoto(photo);
        if (deviation.PhotoSha256.Length > 0)
            sheet.Write($"SHA-256 of the photograph: {deviation.PhotoSha256}", PdfStyle.Note);
        sheet.Space(8);
    }

    private void WritePhoto(ReadOnlyMemory<byte> photo)
    {
        if (Photograph.MediaType(photo.Span) is null)
            sheet.Write("The photograph is neither PNG nor JPEG and is not shown.", PdfStyle.Body);
        else if (Read(photo) is not { } image)
            sheet.Write("The photograph is damaged and could not be drawn.", PdfStyle.Body);
        else
            Draw(image);
    }

    /// <summary>The picture; null when the library cannot read it, for which it throws whatever its decoder happens to throw.</summary>
    private static XImage? Read(ReadOnlyMemory<byte> photo)
    {
        try
        {
            return XImage.FromStream(new MemoryStream(photo.ToArray()));
        }
#pragma warning disable CA1031 // A damaged photograph must not cost the report.
        catch (Exception)
#pragma warning restore CA1031
        {
            return null;
        }
    }

    private void Draw(XImage image)
    {
        using (image)
        {
            var scale = Math.Min(WidestPhoto / image.PixelWidth, TallestPhoto / image.PixelHeight);
            var (width, height) = (image.PixelWidth * scale, image.PixelHeight * scale);
            sheet.Need(height + 8);
            sheet.Graphics.DrawImage(image, PdfSheet.Left, sheet.Y + 4, width, height);
            sheet.Y += height + 8;
        }
    }
}
