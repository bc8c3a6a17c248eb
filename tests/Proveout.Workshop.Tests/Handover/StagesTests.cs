namespace Proveout.Workshop.Tests.Handover;

public sealed class StagesTests
{
    private static readonly Lazy<StagesView> View = new(() => StageViews.Of(Samples.Load("alderbrook"), Samples.Desk.Of)!);

    [Fact]
    public void A_build_can_be_started_before_the_enclosure_is_fitted()
    {
        var shelf = new MachineShelf(Samples.Files, [Samples.PathOf("alderbrook")]);

        var first = shelf.Find("alderbrook-without-enclosure")!;

        Assert.Equal("Alderbrook without enclosure", first.Design.Name);
        Assert.Null(first.Design.FindPart("G3"));
        Assert.NotEqual(Samples.Load("alderbrook").Fingerprint, first.Fingerprint);
    }

    [Fact]
    public void After_the_enclosure_a_few_checks_catch_what_its_fitting_can_bring()
    {
        var fitting = Assert.Single(View.Value.Fittings);
        var whole = Samples.Planned("alderbrook");

        Assert.InRange(fitting.Table.Checks.Count, 5, View.Value.Checks / 4);
        // What the plan of the whole machine catches of these mistakes, the few checks catch too.
        var caughtByAll = whole.Plan.Caught.Select(fault => whole.Dictionary.Faults[fault].Id).ToHashSet();
        Assert.All(fitting.Table.Mistakes.Where(row => row.CaughtBy.Count == 0), row => Assert.DoesNotContain(row.Fault.Id, caughtByAll));
        Assert.Contains(fitting.Table.Mistakes, row => row.Fault.Subjects.Contains("W519"));
    }

    [Fact]
    public void Every_mistake_that_only_the_whole_machine_can_have_is_reckoned_with()
    {
        var before = Samples.Desk.Of(StagedMachines.Before(Samples.Load("alderbrook"))[0]).Dictionary.Faults.Select(fault => fault.Id).ToHashSet();
        var reckoned = View.Value.Fittings[0].Table.Mistakes.Select(row => row.Fault.Id).ToHashSet();

        Assert.All(Samples.Planned("alderbrook").Dictionary.Faults.Where(fault => !before.Contains(fault.Id)), fault => Assert.Contains(fault.Id, reckoned));
    }

    [Fact]
    public void What_the_enclosure_does_to_air_and_heat_is_said() =>
        Assert.Equal(["Air", "Heat"], View.Value.Fittings[0].Again.Select(sentence => sentence.Split(':')[0]));

    [Fact]
    public void A_machine_of_which_nothing_comes_later_has_no_stages() => Assert.Null(StageViews.Of(Samples.Load("pennywort"), Samples.Desk.Of));
}
