using PdfSharp.Pdf;

namespace Proveout.Publish.Report;

/// <summary>A document with what every document of ours has: its description, head and foot of every page, identifiers that follow from content.</summary>
internal static class PdfBook
{
    /// <summary>Writes the document and leaves the stream open. Equal input gives equal bytes.</summary>
    /// <param name="title">What it says of itself.</param>
    /// <param name="destination">Where to.</param>
    /// <param name="fill">Writes its pages.</param>
    public static void Write(BookTitle title, Stream destination, Action<PdfDocument> fill)
    {
        using var document = new PdfDocument();
        document.Info.Title = PlainText.Clean(title.Title);
        document.Info.Author = PlainText.Clean(title.Author);
        document.Info.Subject = PlainText.Clean(title.Identity);
        document.Info.Creator = "Proveout";
        document.Info.CreationDate = title.Written.UtcDateTime;
        document.Info.ModificationDate = title.Written.UtcDateTime;
        document.Language = "en";
        fill(document);
        PdfFrame.Draw(document, title);
        using var file = new MemoryStream();
        document.Save(file, closeStream: false);
        destination.Write(PdfIdentity.FromContent(file.ToArray()));
    }
}
