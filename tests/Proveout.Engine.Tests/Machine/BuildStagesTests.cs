using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Machine;

public sealed class BuildStagesTests
{
    private static Outcome<MachineDesign> Read(string later, string more = "") => MachineReader.Read(
        [
            new SourceText("small.yaml", $"""
                format: proveout-machine 1
                machine: {"{"}name: Small, summary: For a test.{"}"}
                parts:
                  A1: {"{"}type: motion-controller-4, name: Part{"}"}
                  G1: {"{"}type: fan-24-40, name: Part{"}"}
                  G2: {"{"}type: fan-24-40, name: Part{"}"}
                  M1: {"{"}type: stepper-42-40, name: Part{"}"}
                conductors:
                  W1: {"{"}from: A1.FAN0+, to: G1.+, section: 0.25 mm2, colour: red, length: 200 mm{"}"}
                  W2: {"{"}from: A1.FAN0-, to: G1.-, section: 0.25 mm2, colour: black, length: 200 mm{"}"}
                  W3: {"{"}from: G1.+, to: G2.+, section: 0.25 mm2, colour: red, length: 200 mm{"}"}
                later:
                {later}
                {more}
                """),
        ],
        Repository.Catalogue);

    private static MachineDesign Design(string later) => Read(later) is { Value: { } design } ? design : throw new InvalidOperationException(string.Join('\n', Read(later).Diagnostics));

    [Fact]
    public void Stages_grow_in_the_order_of_the_file_and_end_with_the_whole_machine()
    {
        var design = Design("  filter: {parts: [G2]}\n  lid: {parts: [G1], affects: [air, heat], note: Glass.}");

        var stages = BuildStages.Of(design);

        Assert.Equal([["filter", "lid"], ["lid"], []], stages.Select(stage => stage.Missing.Select(fitting => fitting.Name).ToArray()));
        Assert.Equal([null, "filter", "lid"], stages.Select(stage => stage.Fitted?.Name));
        Assert.Same(design, stages[^1].Design);
        Assert.Equal([2, 3, 4], stages.Select(stage => stage.Design.Parts.Count));
    }

    [Fact]
    public void A_conductor_comes_with_the_later_of_its_two_parts() =>
        Assert.Equal(
            [[], ["W1", "W2"], ["W1", "W2", "W3"]],
            BuildStages.Of(Design("  lid: {parts: [G1]}\n  filter: {parts: [G2]}")).Select(stage => stage.Design.Conductors.Select(conductor => conductor.Id).ToArray()));

    [Fact]
    public void An_opening_whose_fan_comes_later_is_a_hole_until_then()
    {
        var design = Design("  lid: {parts: [G1]}\nbays:\n  bay: {inside: 300 x 200 x 80 mm, parts: [A1, G1], openings: {out: {size: 40 x 40 mm, fan: {part: G1, blows: out, most-flow: 10 m3/h, most-pressure: 20 Pa}}, in: {size: 60 x 60 mm}}}");

        var bay = Assert.Single(BuildStages.Of(design)[0].Design.Bays);

        Assert.Equal(["A1"], bay.Parts);
        Assert.Equal(2, bay.Openings.Count);
        Assert.All(bay.Openings, opening => Assert.Null(opening.Fan));
        Assert.NotNull(design.Bays[0].Openings[0].Fan);
    }

    [Fact]
    public void A_machine_of_which_nothing_comes_later_has_one_stage()
    {
        var pennywort = Repository.Design("pennywort");

        Assert.Same(pennywort, Assert.Single(BuildStages.Of(pennywort)).Design);
    }

    [Fact]
    public void What_is_written_reads_as_the_same_stages()
    {
        var design = Design("  lid: {parts: [G1], affects: [air, motion], note: Glass.}");

        var again = MachineReader.Read([new SourceText("again.yaml", MachineWriter.Write(design, Repository.Catalogue))], Repository.Catalogue).Value!;

        Assert.Equal(design.Later, again.Later);
    }

    [Theory]
    [InlineData("  lid: {parts: [G9]}", "unknown-part")]
    [InlineData("  lid: {note: Glass.}", "nothing-later")]
    [InlineData("  lid: {parts: [G1]}\n  filter: {parts: [G1]}", "later-twice")]
    [InlineData("  lid: {parts: [M1]}", "later-motor", "axes: {x: {from: 0 mm, to: 10 mm}}\nscrews: {lift: {moves: x, lead: 8 mm, driven: {motor: M1}}}")]
    [InlineData("  lid: {parts: [A1], affects: [noise]}", "unknown-word")]
    public void What_cannot_come_later_is_refused(string later, string rule, string more = "") =>
        Assert.Contains(Read(later, more).Diagnostics, diagnostic => diagnostic.Rule == rule);
}
