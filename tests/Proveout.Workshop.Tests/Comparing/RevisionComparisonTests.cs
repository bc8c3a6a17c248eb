using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Workshop.Tests.Comparing;

public sealed class RevisionComparisonTests
{
    private static readonly Lazy<PlannedMachine> Relanded = new(() => Planned(Landed(Samples.Pennywort.Machine.Design)));

    [Fact]
    public void A_machine_compared_with_itself_keeps_every_reading()
    {
        var comparison = RevisionComparison.Of(Samples.Pennywort, Samples.Pennywort);

        Assert.Empty(comparison.Changes);
        Assert.Empty(comparison.Tugs);
        Assert.All(comparison.Checks, check => Assert.Equal(CheckStanding.StillHolds, check.Standing));
    }

    // The oracle: every fault of both machines simulated anew, one by one, at every check that is said to hold.
    [Fact]
    public void A_reading_that_holds_shows_in_both_machines_the_same_under_every_mistake()
    {
        var (before, after) = (Samples.Pennywort, Relanded.Value);
        var holding = RevisionComparison.Of(before, after).Checks.Where(check => check.Standing == CheckStanding.StillHolds).Select(check => check.Check.Id).ToArray();

        Assert.NotEmpty(holding);
        var (was, now) = (Shown(before, holding), Shown(after, holding));
        Assert.All(was.Keys.Union(now.Keys), fault =>
            Assert.All(
                Enumerable.Range(0, holding.Length),
                check => AssertAlike(was.GetValueOrDefault(fault, was[""])[check], now.GetValueOrDefault(fault, now[""])[check])));
    }

    [Fact]
    public void What_is_measured_through_a_re_landed_conductor_is_read_again_and_its_neighbours_are_tugged()
    {
        var comparison = RevisionComparison.Of(Samples.Pennywort, Relanded.Value);

        Assert.Equal("W43 now lands on A1.STOP1-V, not on A1.STOP1-0V.", Assert.Single(comparison.Changes).Sentence);
        Assert.All(
            comparison.Checks.Where(check => check.Check.Points.Any(point => point.ToString().Contains("STOP1", StringComparison.Ordinal))),
            check => Assert.NotEqual(CheckStanding.StillHolds, check.Standing));
        Assert.Contains(comparison.Checks, check => check.Standing == CheckStanding.Repeat);
        Assert.Contains(comparison.Tugs, tug => tug.Place == "A1 STOP1" && tug.Conductors.Contains("W43") && tug.Conductors.Count > 1);
    }

    [Fact]
    public void A_conductor_with_another_label_costs_no_reading()
    {
        var design = Samples.Pennywort.Machine.Design;
        var relabelled = Planned(design with { Conductors = design.Conductors.Select(conductor => conductor.Id == "W43" ? conductor with { Id = "W943" } : conductor).ToValueList() });
        var comparison = RevisionComparison.Of(Samples.Pennywort, relabelled);

        Assert.Equal(ChangeKind.ConductorRenamed, Assert.Single(comparison.Changes).Kind);
        Assert.DoesNotContain(comparison.Checks, check => check.Standing == CheckStanding.Repeat);
    }

    [Theory]
    [InlineData("alderbrook", 3)]
    [InlineData("quarrymoor", 3)]
    public void What_was_built_differs_from_the_design_by_what_its_file_says(string name, int mistakes)
    {
        var built = Revision.Read(Samples.Files, Samples.PathOf($"{name}-as-wired"));

        Assert.Empty(built.Diagnostics);
        Assert.Equal(mistakes, DesignChanges.Between(Samples.Load(name).Design, built.Value!.Design).Count);
    }

    [Fact]
    public void Exchanged_plugs_are_seen_as_ends_that_changed_places()
    {
        var built = Revision.Read(Samples.Files, Samples.PathOf("pennywort-as-wired")).Value!;
        var changes = DesignChanges.Between(Samples.Pennywort.Machine.Design, built.Design);

        Assert.Contains(changes, change => change.Kind == ChangeKind.EndsSwapped && change.Terminals.Any(terminal => terminal.Terminal.StartsWith("OUT0", StringComparison.Ordinal)));
    }

    private static Dictionary<string, ReadingInterval[]> Shown(PlannedMachine planned, string[] checks)
    {
        int[] places = [.. checks.Select(check => planned.Dictionary.IndexOfCheck(check)!.Value)];
        ReadingInterval[] Under(params int[] faults)
        {
            var shown = planned.Campaign.SimulateTogether(faults);
            return [.. places.Select(place => shown[place])];
        }

        var all = planned.Campaign.Faults.Index().ToDictionary(item => item.Item.Fault.Id, item => Under(item.Index), StringComparer.Ordinal);
        all.Add("", Under());
        return all;
    }

    private static void AssertAlike(ReadingInterval one, ReadingInterval other)
    {
        AssertAlike(one.Low, other.Low);
        AssertAlike(one.High, other.High);
    }

    private static void AssertAlike(double one, double other) =>
        Assert.True(one.Equals(other) || Math.Abs(one - other) <= 1e-5 * Math.Max(Math.Abs(one), Math.Abs(other)), $"{one} against {other}");

    private static MachineDesign Landed(MachineDesign design)
    {
        var (right, wrong) = (new TerminalReference("A1", "STOP1-0V"), new TerminalReference("A1", "STOP1-V"));
        TerminalReference Landing(TerminalReference terminal) => terminal == right ? wrong : terminal;
        return design with
        {
            Conductors = design.Conductors
                .Select(conductor => conductor.Id == "W43" ? conductor with { From = Landing(conductor.From), To = Landing(conductor.To) } : conductor)
                .ToValueList(),
        };
    }

    private static PlannedMachine Planned(MachineDesign design) => PlannedMachine.Of(new LoadedMachine("changed", "changed", design, "changed"), onlyGreedy: true);
}
