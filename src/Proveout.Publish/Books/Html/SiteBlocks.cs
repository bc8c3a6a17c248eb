using System.Xml.Linq;
using static Proveout.Publish.Report.HtmlElements;

namespace Proveout.Publish.Books;

/// <summary>The pieces of one chapter as elements of its page.</summary>
internal sealed class SiteBlocks(BookChapter chapter)
{
    // A page stays below 150 kB with what it shows; drawings beyond that are led to.
    private const int MostDrawn = 90_000;
    private readonly ChapterAnchors _anchors = new(chapter);
    private int _drawn;

    /// <summary>Place of a drawing's file.</summary>
    public static string FileOf(BookDrawing drawing) => $"drawings/{drawing.Sheet.Name}.svg";

    /// <summary>Place of a photograph's file.</summary>
    public static string FileOf(BookPhotograph photograph) => $"photographs/{photograph.Name}.jpg";

    /// <summary>All of them.</summary>
    public IEnumerable<XElement> All() => chapter.Blocks.SelectMany(Of);

    private IEnumerable<XElement> Of(BookBlock block) => block switch
    {
        BookHeading heading => [new("h2", new XAttribute("id", _anchors.Of(heading)), PlainText.Clean(heading.Text))],
        BookText text => [Text("p", text.Text)],
        BookCautions { Cautions.Count: > 0 } cautions => [Cautions(cautions)],
        BookList { Items.Count: > 0 } list => [list.IsNumbered ? new XElement("ol", list.Items.Select(item => Text("li", item))) : List(list.Items)],
        BookTable { Rows.Count: 0 } => [Text("p", "None.")],
        BookTable table => [Table(table.Caption, [.. table.Columns.Select(column => column.Heading)], table.Rows.Select(RowOf))],
        BookDrawing drawing => [Drawing(drawing)],
        BookPhotograph photograph => [Photograph(photograph)],
        BookCommand command => [new("pre", new XAttribute("tabindex", "0"), Text("code", command.Text))],
        BookDownloads downloads => [new("ul", downloads.Names.Select(name => new XElement("li", SiteParts.Link(name, name, new XAttribute("download", name[(name.LastIndexOf('/') + 1)..])))))],
        _ => [],
    };

    private static XElement Cautions(BookCautions cautions) =>
        new("div", new XAttribute("class", "cautions"), new XAttribute("role", "note"), new XAttribute("aria-label", "Caution"), List(cautions.Cautions));

    private static XElement[] RowOf(IReadOnlyList<string> row) =>
    [
        new("th", new XAttribute("scope", "row"), new XText(PlainText.Clean(row[0].Length == 0 ? "–" : row[0]))),
        .. row.Skip(1).Select(cell => Text("td", cell.Length == 0 ? "–" : cell)),
    ];

    private XElement Drawing(BookDrawing drawing)
    {
        var file = FileOf(drawing);
        _drawn += drawing.Sheet.Svg.Length;
        if (_drawn > MostDrawn)
            return new("p", SiteParts.Link(file, $"Drawing: {drawing.Sheet.Title}"));
        return new(
            "figure",
            new XElement("a", new XAttribute("href", file), Image(file, drawing.Description, 297, 210)),
            Text("figcaption", drawing.Sheet.Title));
    }

    private static XElement Photograph(BookPhotograph photograph) => new(
        "figure",
        new XAttribute("class", "photograph"),
        Image(FileOf(photograph), photograph.Caption, photograph.Picture.Width, photograph.Picture.Height),
        Text("figcaption", photograph.Caption));

    private static XElement Image(string file, string description, int width, int height) => new(
        "img",
        new XAttribute("src", file), new XAttribute("alt", PlainText.Clean(description)), new XAttribute("width", width), new XAttribute("height", height), new XAttribute("loading", "lazy"));
}
