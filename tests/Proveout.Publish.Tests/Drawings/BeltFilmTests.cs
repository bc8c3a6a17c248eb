using Proveout.Publish.Drawings;

namespace Proveout.Publish.Tests.Drawings;

public sealed class BeltFilmTests
{
    private static BeltFrame Frame(double x) => new(
        FormattableString.Invariant($"x at {x} mm"),
        [new DrawnBelt("belt", 0, 0, [new BeltArc(x, 0, x, 20, 10, true, false)], 0, 20)],
        [new BeltMark("motor", 0, 10, 10, true, "M1"), new BeltMark("carriage", x, 10, 10, false, "")]);

    private static SvgReading Film => SvgReading.Of(new DrawingSheet("", "", BeltFilm.Of("Belts as x moves", "From 0 to 200 mm and back.", [Frame(0), Frame(100), Frame(200)])));

    [Fact]
    public void Every_picture_stands_beside_the_one_before_and_says_where_the_axis_is()
    {
        var strip = Assert.Single(Film.Root.Descendants(SvgReading.Svg + "g"), group => group.Attribute("class")?.Value == "strip");
        var pictures = strip.Elements(SvgReading.Svg + "g").ToList();

        // From −10 − 40 to 210 + 40 mm.
        Assert.Equal(["translate(0 0)", "translate(300 0)", "translate(600 0)"], pictures.Select(picture => picture.Attribute("transform")!.Value));
        Assert.Equal(["x at 0 mm", "x at 100 mm", "x at 200 mm"], pictures.Select(picture => picture.Elements(SvgReading.Svg + "text").Single().Value));
    }

    [Fact]
    public void What_stands_still_is_drawn_once()
    {
        var titles = Film.Root.Descendants(SvgReading.Svg + "title").Select(title => title.Value).ToList();

        Assert.Single(titles, "motor, turned by M1");
        Assert.Equal(3, titles.Count(title => title == "carriage"));
    }

    [Fact]
    public void It_moves_only_where_nobody_asked_for_less_motion_and_holds_under_a_pointer()
    {
        var style = Film.Root.Element(SvgReading.Svg + "style")!.Value;

        var (moves, asked) = (style.IndexOf("animation:run", StringComparison.Ordinal), style.IndexOf("@media screen and (prefers-reduced-motion:no-preference){", StringComparison.Ordinal));
        Assert.True(asked > 0 && moves > asked && style.IndexOf("}}", asked, StringComparison.Ordinal) > moves);
        Assert.Equal(moves, style.LastIndexOf("animation:run", StringComparison.Ordinal));
        // Still, the middle of three pictures is in sight.
        Assert.Contains(".strip{transform:translateX(-300px)}", style, StringComparison.Ordinal);
        Assert.Contains("svg:hover .strip,svg:active .strip{animation-play-state:paused}", style, StringComparison.Ordinal);
        Assert.Contains("steps(3,jump-none) infinite alternate", style, StringComparison.Ordinal);
    }

    [Fact]
    public void It_says_what_it_shows() => Assert.Equal(("Belts as x moves", "From 0 to 200 mm and back."), (Film.Title, Film.Description));
}
