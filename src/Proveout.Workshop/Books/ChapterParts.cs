using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>Divides chapters that would make a heavy page. What can hurt stands again at the head of each part.</summary>
internal static class ChapterParts
{
    // A page of 150 kB has room for this, style sheet and frame.
    private const int HeaviestPart = 100_000;
    private const int HeaviestTable = 40_000;

    /// <summary>The chapter itself, or its parts.</summary>
    public static IEnumerable<BookChapter> Of(BookChapter chapter)
    {
        var parts = new List<List<BookBlock>> { new() };
        BookCautions[] common = [.. chapter.Blocks.TakeWhile(block => block is not BookHeading).OfType<BookCautions>()];
        foreach (var section in Sections(chapter.Blocks.SelectMany(Divided)))
            foreach (var (at, block) in section.Index())
            {
                // A section stays in one piece when a fresh page can hold it.
                var ahead = at == 0 ? Math.Min(section.Sum(WeightOf), HeaviestPart) : WeightOf(block);
                if (parts[^1].Count > common.Length && parts[^1].Sum(WeightOf) + ahead > HeaviestPart)
                    parts.Add([.. common, .. at == 0 ? [] : Again(section)]);
                parts[^1].Add(block);
            }

        return parts.Select((blocks, at) => at == 0 ? chapter with { Blocks = blocks } : chapter with
        {
            Id = FormattableString.Invariant($"{chapter.Id}-part-{at + 1}"),
            Title = FormattableString.Invariant($"{chapter.Title}, part {at + 1}"),
            Blocks = blocks,
        });
    }

    private static IEnumerable<BookBlock> Again(IReadOnlyList<BookBlock> section) =>
        section[0] is BookHeading heading ? [heading with { Text = $"{heading.Text}, continued" }, .. section.OfType<BookCautions>().Take(1)] : [];

    private static IEnumerable<IReadOnlyList<BookBlock>> Sections(IEnumerable<BookBlock> blocks)
    {
        var section = new List<BookBlock>();
        foreach (var block in blocks)
        {
            if (block is BookHeading && section.Count > 0)
            {
                yield return section;
                section = [];
            }

            section.Add(block);
        }

        if (section.Count > 0)
            yield return section;
    }

    private static IEnumerable<BookBlock> Divided(BookBlock block)
    {
        if (block is not BookTable table || WeightOf(table) <= HeaviestTable)
            return [block];
        var rows = Math.Max(1, table.Rows.Count * HeaviestTable / WeightOf(table));
        return table.Rows.Chunk(rows).Select((some, at) => table with { Caption = at == 0 ? table.Caption : $"{table.Caption}, continued", Rows = some });
    }

    // What the marks of HTML add, near enough; a cell bears its heading for narrow screens.
    private static int WeightOf(BookBlock block) => block is BookTable table
        ? table.Rows.Sum(row => 25 + row.Zip(table.Columns).Sum(cell => cell.First.Length + cell.Second.Heading.Length + 42))
        : block is BookDrawing ? 0 : block.Words.Sum(words => words.Length + 12);
}
