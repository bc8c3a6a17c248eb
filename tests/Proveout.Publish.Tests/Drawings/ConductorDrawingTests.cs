using Proveout.Engine.Machine;
using Proveout.Publish.Drawings;

namespace Proveout.Publish.Tests.Drawings;

public sealed class ConductorDrawingTests
{
    [Theory]
    [InlineData("alderbrook")]
    [InlineData("pennywort")]
    public void The_sheet_of_every_conductor_can_be_read(string machine)
    {
        var layout = MachineLayout.Of(Samples.Design(machine));
        Assert.All(layout.Design.Conductors.SelectMany(conductor => ConductorDrawing.Of(layout, conductor)), sheet => LabelReading.AssertApart(SvgReading.Of(sheet)));
    }

    [Fact]
    public void A_strip_goes_from_terminal_through_routes_to_terminal_with_lengths()
    {
        var words = Words("W201");
        Assert.Contains("T1.V+1", words);
        Assert.Contains("F8.IN", words);
        Assert.Contains("low-duct", words);
        Assert.Contains(words, word => word.StartsWith("way ", StringComparison.Ordinal) && word.Contains("cut 360 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void A_cut_that_is_shorter_than_the_way_is_told()
    {
        var design = Samples.Design("alderbrook");
        var shorter = design with { Conductors = [.. design.Conductors.Select(each => each.Id == "W201" ? each with { Length = UnitsNet.Length.FromMillimeters(20), LengthIsComputed = false } : each)] };
        Assert.Contains(ConductorDrawing.Of(shorter, "W201").SelectMany(sheet => SvgReading.Of(sheet).Words), word => word.Contains("shorter than the way", StringComparison.Ordinal));
    }

    [Fact]
    public void A_conductor_of_a_machine_without_places_still_has_its_strip() => Assert.Contains("X2.1", ConductorWords("pennywort", "W3"));

    [Fact]
    public void A_conductor_that_is_not_there_has_no_sheet() =>
        Assert.Throws<ArgumentException>(() => ConductorDrawing.Of(Samples.Design("pennywort"), "W999"));

    private static List<string> Words(string id) => ConductorWords("alderbrook", id);

    private static List<string> ConductorWords(string machine, string id) =>
        [.. ConductorDrawing.Of(Samples.Design(machine), id).SelectMany(sheet => SvgReading.Of(sheet).Words)];
}
