using Proveout.Publish.Report;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Tokens;

namespace Proveout.Publish.Tests.Report;

/// <summary>Reads a report back with a PDF reader that shares nothing with the writer.</summary>
internal sealed class PdfReading : IDisposable
{
    private readonly PdfDocument _document;

    public PdfReading(ReportModel report)
    {
        _document = PdfDocument.Open(Bytes(report));
        Pages = _document.GetPages().Select(page => (IReadOnlyList<Word>)page.GetWords().ToList()).ToList();
    }

    public IReadOnlyList<IReadOnlyList<Word>> Pages { get; }

    public DocumentInformation Information => _document.Information;

    /// <summary>All words in one line, page after page.</summary>
    public string Text => string.Join(' ', Pages.SelectMany(page => page).Select(word => word.Text));

    /// <summary>Descriptors of all fonts in the file.</summary>
    public IEnumerable<DictionaryToken> FontDescriptors => _document.Structure.CrossReferenceTable.ObjectOffsets.Keys
        .Select(reference => _document.Structure.GetObject(reference).Data)
        .OfType<DictionaryToken>()
        .Where(token => token.TryGet(NameToken.Type, out var type) && type is NameToken { Data: "FontDescriptor" });

    public IReadOnlyList<string> Bookmarks =>
        _document.TryGetBookmarks(out var bookmarks) ? bookmarks.GetNodes().Select(node => node.Title).ToList() : [];

    public int PictureCount => _document.GetPages().Sum(page => page.GetImages().Count());

    public static byte[] Bytes(ReportModel report)
    {
        using var file = new MemoryStream();
        PdfReport.Write(report, file);
        return file.ToArray();
    }

    public void Dispose() => _document.Dispose();
}
