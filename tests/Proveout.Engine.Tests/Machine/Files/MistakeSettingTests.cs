using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Machine;

/// <summary>What a machine file says of kinds of mistake, and what follows from it.</summary>
public sealed class MistakeSettingTests
{
    private static readonly MachineDesign Design = Repository.Design("pennywort");

    [Fact]
    public void A_file_switches_a_kind_off_or_gives_its_probability() =>
        Assert.Equal([new MistakeSetting("bridge", null), new MistakeSetting("poor-joint", 0.004)], Sample.Read(Sample.MachineText).Value!.Mistakes);

    [Theory]
    [InlineData("0,004", 0.004)]
    [InlineData("4e-3", 0.004)]
    [InlineData(".5", 0.5)]
    public void A_probability_may_be_written_as_any_number(string text, double chance) =>
        Assert.Equal(chance, Sample.Read(Sample.MachineText.Replace("0.004", $"\"{text}\"", StringComparison.Ordinal)).Value!.PriorOf("poor-joint"));

    [Fact]
    public void One_file_of_a_folder_says_it()
    {
        const string Other = "format: proveout-machine 1\nmistakes: {leakage: off}\n";
        var read = MachineReader.Read([new("a.yaml", Sample.MachineText), new("b.yaml", Other)], Sample.Catalogue);

        Assert.Equal("duplicate-key", Assert.Single(read.Diagnostics).Rule);
    }

    [Fact]
    public void The_writer_writes_it_and_leaves_it_out_when_nothing_is_said()
    {
        var design = Sample.Read(Sample.MachineText).Value!;

        Assert.Contains("\nmistakes:\n  bridge: off\n  poor-joint: 0.004\n", MachineWriter.Write(design, Sample.Catalogue), StringComparison.Ordinal);
        Assert.DoesNotContain("mistakes", MachineWriter.Write(design with { Mistakes = [] }, Sample.Catalogue), StringComparison.Ordinal);
    }

    [Fact]
    public void A_kind_that_is_off_is_not_imagined_and_the_others_are()
    {
        var all = FaultsOf(Design);
        var some = FaultsOf(Design with { Mistakes = [new("bridge", null)] });

        Assert.Contains(all, fault => fault.Fault.Kind == "bridge");
        Assert.Equal(all.Where(fault => fault.Fault.Kind != "bridge").Select(fault => fault.Fault.Id), some.Select(fault => fault.Fault.Id));
        Assert.Equal(some.Length, new WiringCampaign(Design with { Mistakes = [new("bridge", null)] }).Faults.Count);
    }

    [Fact]
    public void A_kind_with_a_probability_has_it_in_every_mistake() =>
        Assert.All(
            FaultsOf(Design with { Mistakes = [new("poor-joint", 0.25)] }),
            fault => Assert.Equal(fault.Fault.Kind == "poor-joint", fault.Fault.Prior.Equals(0.25)));

    [Fact]
    public void What_only_the_eye_shows_is_switched_the_same_way()
    {
        var design = Design with { Mistakes = [new("ferrule-missing", null), new("joint-slips", 0.25)] };
        var faults = new ObservationCampaign(new WiringContext(WiringNetworkBuilder.Build(design))).Faults;

        Assert.DoesNotContain(faults, fault => fault.Kind == "ferrule-missing");
        Assert.All(faults.Where(fault => fault.Kind == "joint-slips"), fault => Assert.Equal(0.25, fault.Prior));
    }

    private static WiringFault[] FaultsOf(MachineDesign design) => [.. WiringFaultRules.Generate(new WiringContext(WiringNetworkBuilder.Build(design)))];
}
