using System.Globalization;
using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>
/// Belts of a plane as one axis goes to and fro over its travel: pictures side by side on a strip, of which one is in sight and which moves on picture by
/// picture. Every picture is computed, none is in-between. Where a person asked for less motion the strip stands still with the middle of the travel in
/// sight; a pointer on it holds it. Styles only, no script (CSS Animations Level 1, CSS Easing Functions Level 1, Media Queries Level 5).
/// </summary>
public static class BeltFilm
{
    private const double SecondsEach = 0.15;
    private static readonly TextStyle Words = new(12);

    /// <summary>The film, as an SVG document that stands alone.</summary>
    /// <param name="title">What it shows, for those who do not see it.</param>
    /// <param name="description">The same at length.</param>
    /// <param name="frames">Its pictures from one end of the travel to the other; two or more.</param>
    public static string Of(string title, string description, IReadOnlyList<BeltFrame> frames)
    {
        ArgumentNullException.ThrowIfNull(frames);
        ArgumentOutOfRangeException.ThrowIfLessThan(frames.Count, 2);
        var extent = BeltExtent.Of([.. frames.SelectMany(frame => frame.Marks)], frames[0].Belts);
        var film = Shape.Element("svg", ("viewBox", extent.ViewBox), ("role", "img"), ("font-family", "system-ui, sans-serif"));
        var style = Shape.Element("style");
        style.Add(StyleOf(frames.Count, extent.Right - extent.Left));
        var still = frames[0].Marks.Where(mark => frames.All(frame => frame.Marks.Contains(mark))).ToHashSet();
        // The window cuts off the pictures beside the one in sight, whatever shape the film is shown in.
        var window = Shape.Element("svg", ("x", extent.Left), ("y", -extent.High), ("width", extent.Right - extent.Left), ("height", extent.Height), ("viewBox", extent.ViewBox));
        var strip = Shape.Element("g", ("class", "strip"));
        foreach (var (index, frame) in frames.Index())
            strip.Add(Picture(frame, still, extent, index));
        window.Add(strip, BeltDrawing.Content([], [.. still]), BeltDrawing.Legend(frames[0].Belts, extent));
        film.Add(Shape.Title(title), Described(description), style, window);
        return film.ToString(SaveOptions.DisableFormatting);
    }

    private static XElement Described(string description)
    {
        var words = Shape.Element("desc");
        words.Add(PlainText.Clean(description));
        return words;
    }

    private static XElement Picture(BeltFrame frame, HashSet<BeltMark> still, BeltExtent extent, int index)
    {
        var picture = Shape.Element("g", ("transform", string.Create(CultureInfo.InvariantCulture, $"translate({index * (extent.Right - extent.Left):0.##} 0)")));
        picture.Add(BeltDrawing.Content(frame.Belts, [.. frame.Marks.Where(mark => !still.Contains(mark))]));
        picture.Add(Shape.Text(frame.Words, extent.Left + 10, -extent.High + 16, Words, extent.Right - extent.Left - 20));
        return picture;
    }

    private static string StyleOf(int count, double width) => string.Create(
        CultureInfo.InvariantCulture,
        $"svg{{color:#16181d;background:#ffffff}}@media (prefers-color-scheme:dark){{svg{{color:#e8eaed;background:#16181d}}}}"
        + $".strip{{transform:translateX({-(count / 2) * width:0.##}px)}}"
        + $"@media screen and (prefers-reduced-motion:no-preference){{.strip{{animation:run {SecondsEach * count:0.##}s steps({count},jump-none) infinite alternate}}}}"
        + $"svg:hover .strip,svg:active .strip{{animation-play-state:paused}}"
        + $"@keyframes run{{from{{transform:translateX(0)}}to{{transform:translateX({-(count - 1) * width:0.##}px)}}}}");
}
