using Proveout.Publish.Drawings;

namespace Proveout.Publish.Tests.Drawings;

public sealed class PartDrawingTests
{
    [Theory]
    [InlineData("alderbrook")]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void The_page_of_every_part_can_be_read(string machine)
    {
        var design = Samples.Design(machine);
        Assert.All(design.Parts.SelectMany(part => PartDrawing.Of(design, part.Designation)), sheet => LabelReading.AssertApart(SvgReading.Of(sheet)));
    }

    [Fact]
    public void A_sheet_is_as_high_as_what_is_on_it_and_no_higher_than_a_page()
    {
        var design = Samples.Design("pennywort");
        var heights = design.Parts.SelectMany(part => PartDrawing.Of(design, part.Designation)).Select(sheet => sheet.HeightMm).ToArray();

        Assert.All(heights, height => Assert.InRange(height, 35, 210));
        Assert.Contains(heights, height => height < 70);
        Assert.Contains(heights, height => height > 150);
    }

    [Fact]
    public void Every_conductor_stands_at_its_terminal_with_colour_in_word_and_code_and_its_other_end()
    {
        var words = Words("A1");
        Assert.Contains("W205 red RD 1.5", words);
        Assert.Contains(words, word => word.StartsWith("to K1.14", StringComparison.Ordinal));
        Assert.Equal(
            Samples.Design("alderbrook").Conductors.Count(conductor => conductor.From.Part == "A1" || conductor.To.Part == "A1"),
            words.Count(word => word.StartsWith("to ", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_protective_conductor_is_painted_in_two_colours()
    {
        var svg = PartDrawing.Of(Samples.Design("alderbrook"), "U1")[0].Svg;
        Assert.Contains("stroke-dasharray", svg);
        Assert.Contains("green-yellow GNYE", svg);
    }

    [Fact]
    public void A_jumper_shows_its_position_and_where_it_gives_its_voltage() =>
        Assert.Contains("Jumper FAN-BANK-1: 24 V, given to FAN0+, FAN1+, FAN2+", Words("A1"));

    [Fact]
    public void A_jumper_that_is_not_fitted_says_so()
    {
        var design = Samples.Design("alderbrook");
        var bare = design with { Parts = [.. design.Parts.Select(part => part with { Jumpers = [] })] };
        Assert.Contains(PartDrawing.Of(bare, "A1").SelectMany(sheet => SvgReading.Of(sheet).Words), word => word.StartsWith("Jumper FAN-BANK-1: not fitted", StringComparison.Ordinal));
    }

    [Fact]
    public void A_part_that_is_not_there_has_no_page() =>
        Assert.Throws<ArgumentException>(() => PartDrawing.Of(Samples.Design("pennywort"), "A99"));

    private static List<string> Words(string part) =>
        [.. PartDrawing.Of(Samples.Design("alderbrook"), part).SelectMany(sheet => SvgReading.Of(sheet).Words)];
}
