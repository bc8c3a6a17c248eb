using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.SetUps;

public sealed class DeadSetUpsTests
{
    private static readonly MachineDesign Flagship = Repository.Design("alderbrook");

    [Fact]
    public void Every_set_up_of_a_mains_machine_says_to_pull_the_plug_and_to_prove_dead() =>
        Assert.All(DeadSetUps.Of(Flagship), setUp =>
        {
            Assert.Contains(setUp.Text.Cautions, caution => caution.StartsWith("Pull the mains plug", StringComparison.Ordinal));
            Assert.Contains(setUp.Text.Cautions, caution => caution.StartsWith("Prove dead", StringComparison.Ordinal));
        });

    [Fact]
    public void Plugs_are_pulled_before_anything_is_mated()
    {
        var setUps = DeadSetUps.Of(Flagship);
        Assert.Equal(DeadSetUps.Apart, setUps[0].Text.Id);
        Assert.Equal(DeadSetUps.Mated, setUps[^1].Text.Id);
    }

    [Fact]
    public void A_switch_that_must_be_on_is_named_and_one_that_is_left_alone_is_not()
    {
        var instructions = string.Join('\n', DeadSetUps.Of(Flagship)[0].Text.Instructions);
        Assert.Contains("Set rocker of S1", instructions, StringComparison.Ordinal);
        Assert.DoesNotContain("B4", instructions, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_position_that_changes_a_contact_has_a_set_up_of_its_own() =>
        Assert.Contains(DeadSetUps.Of(Flagship), setUp => setUp.Operated is { Part: "S2", Position: "pressed" });
}
