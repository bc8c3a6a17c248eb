using PdfSharp.Pdf;
using Proveout.Publish.Report;

namespace Proveout.Publish.Books;

/// <summary>Writes a book as a PDF on A4 with its fonts inside: title, contents with page numbers, bookmarks, chapters.</summary>
public static class BookPdf
{
    /// <summary>Writes the document and leaves the stream open. It bears no moment of writing: equal books give equal bytes.</summary>
    public static void Write(BuildBook book, Stream destination)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(destination);
        var title = new BookTitle(book.Title, book.Machine, book.Which, "", $"Machine file {book.Fingerprint}", DateTimeOffset.UnixEpoch);
        PdfBook.Write(title, destination, document => Fill(document, book));
    }

    private static void Fill(PdfDocument document, BuildBook book)
    {
        PdfContents contents;
        using (var sheet = new PdfSheet(document))
        {
            WriteFront(sheet, book);
            contents = PdfContents.Reserve(sheet, document, [.. book.Chapters.Select(chapter => chapter.Title)]);
            foreach (var chapter in book.Chapters)
            {
                sheet.NewPage();
                contents.Add(document.PageCount);
                WriteChapter(sheet, chapter);
            }
        }

        contents.Fill(document);
    }

    private static void WriteFront(PdfSheet sheet, BuildBook book)
    {
        sheet.Bookmark(book.Title);
        sheet.Space(0);
        sheet.Y += 90;
        sheet.Write("Build book", PdfStyle.Note);
        sheet.Write(book.Machine, PdfStyle.Title);
        if (book.Which.Length > 0)
            sheet.Write(book.Which, PdfStyle.Heading);
        sheet.Write(book.Summary, PdfStyle.Body);
        sheet.Space(14);
        PdfCaution.Write(sheet, BuildBook.NotASafetyStatement);
        sheet.Space(14);
        sheet.Write("Licence", PdfStyle.SubHeading);
        sheet.Write(book.Licence, PdfStyle.Body);
        sheet.Space(14);
        sheet.Write("Credits", PdfStyle.SubHeading);
        foreach (var credit in book.Credits)
            sheet.Write(credit, PdfStyle.Body);
    }

    private static void WriteChapter(PdfSheet sheet, BookChapter chapter)
    {
        sheet.Bookmark(chapter.Title);
        sheet.Write(chapter.Title, PdfStyle.Title);
        sheet.Space(4);
        sheet.Write(chapter.Purpose, PdfStyle.Body);
        sheet.Space(8);
        PdfBlocks.Write(sheet, chapter.Blocks);
    }
}
