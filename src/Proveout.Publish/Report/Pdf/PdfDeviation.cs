using PdfSharp.Drawing;
using Proveout.Publish.Books;

namespace Proveout.Publish.Report;

/// <summary>Writes a deviation with its photograph; the two stay on one page where they can.</summary>
internal sealed class PdfDeviation(PdfSheet sheet, ReportDeviation deviation)
{
    private const double WidestPhoto = 300;
    private const double TallestPhoto = 220;
    private const double PhotoSpace = 8;

    /// <summary>Writes it.</summary>
    public void Write()
    {
        using var image = deviation.Photo is { } photo ? Read(photo) : null;
        PdfRun[] words =
        [
            new(deviation.Subject.Length == 0 ? deviation.Text : $"{deviation.Subject}: {deviation.Text}", PdfStyle.Body),
            new($"{deviation.Person}, {ReportWords.Of(deviation.When)}", PdfStyle.Note),
        ];
        KeepTogether(words, image);
        foreach (var run in words)
            sheet.Write(run.Text, run.Style);
        if (image is not null)
            Draw(image);
        else if (deviation.Photo is not null)
            sheet.Write("The photograph is damaged, or neither PNG nor JPEG, and is not shown.", PdfStyle.Body);
        if (deviation.PhotoSha256.Length > 0)
            sheet.Write($"SHA-256 of the photograph: {deviation.PhotoSha256}", PdfStyle.Note);
        sheet.Space(8);
    }

    private void KeepTogether(PdfRun[] words, XImage? image)
    {
        var height = PdfWrap.Lines(words, PdfSheet.Width).Sum(line => line.Style.LineHeight) + (image is null ? 0 : Size(image).Height + PhotoSpace);
        if (height <= PdfSheet.FullHeight)
            sheet.Need(height);
    }

    // Drawn anew first: what a stranger's file does to a decoder is met in one place, and the page gets no more pixels than it shows.
    private static XImage? Read(ReadOnlyMemory<byte> photo) =>
        PublishedPhotograph.Of(photo) is { } ready ? XImage.FromStream(new MemoryStream(ready.Jpeg.ToArray())) : null;

    /// <summary>As large as its place allows, and no larger than a point for each pixel.</summary>
    private static XSize Size(XImage image)
    {
        var scale = Math.Min(1, Math.Min(WidestPhoto / image.PixelWidth, TallestPhoto / image.PixelHeight));
        return new(image.PixelWidth * scale, image.PixelHeight * scale);
    }

    private void Draw(XImage image)
    {
        var size = Size(image);
        sheet.Need(size.Height + PhotoSpace);
        sheet.Graphics.DrawImage(image, PdfSheet.Left, sheet.Y + (PhotoSpace / 2), size.Width, size.Height);
        sheet.Y += size.Height + PhotoSpace;
    }
}
