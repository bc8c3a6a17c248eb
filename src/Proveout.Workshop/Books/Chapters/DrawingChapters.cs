using Proveout.Publish.Books;
using Proveout.Publish.Drawings;

namespace Proveout.Workshop;

/// <summary>The drawings: schematic, surfaces, each part.</summary>
internal sealed class DrawingChapters : IBookChapters
{
    public IEnumerable<BookChapter> Of(BookCase book)
    {
        var sheets = MachineDrawings.Of(book.Design);
        return
        [
            .. Of("schematic", "Schematic", "How everything is connected.", sheets.Where(sheet => sheet.Name.StartsWith("schematic", StringComparison.Ordinal))),
            .. Of("surfaces", "Where the parts sit", "The surfaces to scale, with parts and routes.", sheets.Where(sheet => sheet.Name.StartsWith("surface", StringComparison.Ordinal))),
            .. Of("part-drawings", "Part by part", "Each part with the conductors that land on it.", sheets.Where(sheet => sheet.Name.StartsWith("part-", StringComparison.Ordinal))),
        ];
    }

    private static IEnumerable<BookChapter> Of(string id, string title, string purpose, IEnumerable<DrawingSheet> sheets)
    {
        BookDrawing[] drawings = [.. sheets.Select(sheet => new BookDrawing(sheet, $"Drawing: {sheet.Title}. The same stands in words in the lists of wires and parts."))];
        if (drawings.Length > 0)
            yield return new(id, title, purpose, drawings);
    }
}
