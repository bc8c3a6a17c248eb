using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>
/// An A4 sheet, landscape (ISO 216), in millimetres: frame with numbered columns, and a foot that says what it is. Lines and words have the colour of
/// the text around them or of the custom property <c>--drawing-ink</c>, on <c>--drawing-paper</c>; printed they are black on white.
/// </summary>
internal static class Paper
{
    public const double Width = 297;
    public const double Height = 210;
    public const double Left = 10;
    public const double Top = 12;
    public const double Right = Width - Left;
    public const double Bottom = Height - 18;
    public const int Columns = 8;

    // Smallest letters of a drawing after ISO 3098-1 are 2.5 mm high; ours are set at that size, so that they hold at A4.
    public const double SmallSize = 2.5;

    /// <summary>The colour that covers what lies below a label.</summary>
    public const string Ground = "var(--drawing-paper, #ffffff)";

    public static readonly TextStyle Small = new(SmallSize);
    private static readonly TextStyle Heading = new(4, Bold: true);
    private static readonly TextStyle Number = new(SmallSize, "middle");
    private static readonly TextStyle AtRight = new(SmallSize, "end");

    private const double FootHeight = 14;

    // Room of the machine's name and the number of the sheet.
    private const double FootWidth = 56;

    private const string Style =
        ".drawing{color:var(--drawing-ink,#16181d);background:var(--drawing-paper,#ffffff)}"
        + "@media (prefers-color-scheme:dark){.drawing{--drawing-ink:#e8eaed;--drawing-paper:#16181d}}"
        + "@media print{.drawing{--drawing-ink:#000000;--drawing-paper:#ffffff}}";

    /// <summary>Column of the sheet that a place lies in, counted from 1.</summary>
    public static int ColumnAt(double x) => Math.Clamp((int)((x - Left) / ((Right - Left) / Columns)) + 1, 1, Columns);

    /// <summary>A whole sheet.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="description">The same in a sentence or two, for those who do not see it.</param>
    /// <param name="foot">What stands in its foot: the machine, then notes.</param>
    /// <param name="place">Its number among its sisters; empty for none.</param>
    /// <param name="content">What is drawn.</param>
    /// <param name="hasColumns">True when places on it are named by column.</param>
    /// <param name="height">How high it is, in millimetres, up to that of A4 landscape: a sheet that holds little is low.</param>
    public static DrawingSheet Sheet(
        string name, string title, string description, (string Machine, string Note) foot, string place, IEnumerable<XElement> content, bool hasColumns = false, double height = Height)
    {
        var sheet = Shape.Element(
            "svg",
            ("viewBox", FormattableString.Invariant($"0 0 {Width} {height}")), ("class", "drawing"), ("role", "img"), ("aria-labelledby", $"{name}-title {name}-desc"),
            ("font-family", "system-ui, sans-serif"), ("stroke-linejoin", "round"));
        var heading = Shape.Title($"{foot.Machine}: {title}");
        heading.SetAttributeValue("id", $"{name}-title");
        var words = Shape.Element("desc", ("id", $"{name}-desc"));
        words.Add(PlainText.Clean(description));
        var style = Shape.Element("style");
        style.Add(Style);
        sheet.Add(heading, words, style, Shape.Box(0, 0, Width, height, 0, Ground, "none", 0), hasColumns ? Ruler() : [], Foot(title, foot, place, height), content);
        return new(name, title, sheet.ToString(SaveOptions.DisableFormatting)) { HeightMm = height };
    }

    private static IEnumerable<XElement> Ruler()
    {
        var step = (Right - Left) / Columns;
        for (var column = 0; column <= Columns; column++)
            yield return Shape.Line(Left + (column * step), 5, Left + (column * step), 9.5, Shape.Ink, 0.18);
        for (var column = 0; column < Columns; column++)
            yield return Shape.Text(FormattableString.Invariant($"{column + 1}"), Left + ((column + 0.5) * step), 8.2, Number, step);
    }

    private static IEnumerable<XElement> Foot(string title, (string Machine, string Note) foot, string place, double height)
    {
        var line = height - FootHeight;
        yield return Shape.Box(5, 5, Width - 10, height - 10, 0, "none", Shape.Ink, 0.35);
        yield return Shape.Line(5, line, Width - 5, line, Shape.Ink, 0.35);
        yield return Shape.Text(title, Left, line + 6, Heading, 130);
        yield return Shape.Text(foot.Machine, Right, line + 3.9, AtRight, FootWidth);
        yield return Shape.Text(place, Right, line + 7.4, AtRight, FootWidth);
        var room = Right - Left - 135 - FootWidth - 4;
        foreach (var (words, at) in TextBlock.Lines(foot.Note, Small, room).Take(2).Select((words, at) => (words, at)))
            yield return Shape.Text(words, Left + 135, line + 3.9 + (at * 3.5), Small, room);
    }
}
