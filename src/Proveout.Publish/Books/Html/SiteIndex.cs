using System.Xml.Linq;
using static Proveout.Publish.Report.HtmlElements;

namespace Proveout.Publish.Books;

/// <summary>The index from A to Z: what the search finds, for a browser without script and for who leafs.</summary>
internal static class SiteIndex
{
    /// <summary>Name of its page.</summary>
    public const string Name = "a-to-z.html";

    /// <summary>The page.</summary>
    public static string Write(BuildBook book)
    {
        var letters = Entries(book)
            .GroupBy(entry => entry.Term)
            .OrderBy(entry => entry.Key, StringComparer.OrdinalIgnoreCase)
            .ThenBy(entry => entry.Key, StringComparer.Ordinal)
            .GroupBy(entry => LetterOf(entry.Key))
            .ToArray();
        return SiteParts.Page(book, "A to Z", Name,
        [
            Text("h1", "A to Z"),
            Classed("p", "lead", "Parts, chapters, checks and drawings by name."),
            new("nav", new XAttribute("aria-label", "Letters"), new XElement("ul", new XAttribute("class", "letters"), letters.Select(letter => new XElement("li", SiteParts.Link($"#{AnchorOf(letter.Key)}", letter.Key))))),
            .. letters.Select(letter => Section(AnchorOf(letter.Key), letter.Key, new XElement("ul", new XAttribute("class", "index"), letter.Select(Line)))),
        ]);
    }

    private static XElement Line(IGrouping<string, (string Term, BookSection Section)> term)
    {
        var places = term.Select(entry => entry.Section).DistinctBy(section => section.Address).ToArray();
        return places.Length == 1
            ? new("li", SiteParts.Link(places[0].Address, term.Key))
            : new("li", $"{PlainText.Clean(term.Key)}: ", places.SelectMany((place, at) => at == 0 ? new object[] { SiteParts.Link(place.Address, place.Title) } : [", ", SiteParts.Link(place.Address, place.Title)]));
    }

    private static IEnumerable<(string Term, BookSection Section)> Entries(BuildBook book) =>
        from section in BookSection.Of(book)
        from term in (string[])
        [
            section.Heading.Length > 0 ? section.Heading : section.Chapter.Title,
            .. section.Blocks.OfType<BookTable>().Where(table => table.IndexedColumns.Count > 0).SelectMany(table => table.Rows.Select(row => string.Join(", ", table.IndexedColumns.Select(column => row[column])))),
            .. section.Blocks.OfType<BookDrawing>().Select(drawing => drawing.Sheet.Title),
        ]
        select (term, section);

    private static string LetterOf(string term) => term.Length > 0 && char.IsAsciiLetter(term[0]) ? char.ToUpperInvariant(term[0]).ToString() : "0–9";

    private static string AnchorOf(string letter) => letter.Length == 1 ? $"letter-{letter.ToLowerInvariant()}" : "letter-other";
}
