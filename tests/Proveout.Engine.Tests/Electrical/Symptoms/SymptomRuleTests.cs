using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Electrical.Symptoms;

/// <summary>One mistake that breaks each symptom, and one that does not.</summary>
public sealed class SymptomRuleTests
{
    private static readonly ReadingInterval Right = new(1, 1);
    private static readonly ReadingInterval Wrong = new(0, 0);
    private static readonly ReadingInterval CannotTell = new(0, 1);

    [Theory]
    [InlineData("symptom-works-g3", "jumper-wrong:A1.FAN-BANK-1:5 V")]
    [InlineData("symptom-works-g3", "part-reversed:W517:W518:G3.+:G3.-")]
    [InlineData("symptom-works-e3", "jumper-wrong:A1.FAN-BANK-1:12 V")]
    [InlineData("symptom-works-e1", "conductor-missing:W113")]
    [InlineData("symptom-works-e2", "element-open:E2.element")]
    [InlineData("symptom-works-k1", "conductor-missing:W218")]
    [InlineData("symptom-works-a2", "conductor-missing:W210")]
    [InlineData("symptom-works-m3", "element-open:M3.coil-2")]
    [InlineData("symptom-works-m3", "ends-swapped:W310:W311:M3.1B:M3.2A")]
    [InlineData("symptom-quiet-m3", "element-open:M3.coil-2")]
    [InlineData("symptom-direction-m3", "ends-swapped:W309:W310:A1.M2-1A:A1.M2-1B")]
    [InlineData("symptom-rests-e1", "switch-shorted:Q1.load")]
    [InlineData("symptom-residual-all-outputs-on", "bridge:T1.N:T1.PE")]
    [InlineData("symptom-tingle-u1-switch-on", "bond-missing:W151")]
    public void A_mistake_that_breaks_it_shows_surely(string symptom, string mistake) =>
        Assert.Equal(Wrong, LiveMachine.Flagship.Shown(symptom, mistake));

    [Theory]
    [InlineData("symptom-works-g3", "jumper-wrong:A1.FAN-BANK-2:5 V")]
    [InlineData("symptom-works-e1", "conductor-missing:W401")]
    [InlineData("symptom-works-k1", "conductor-missing:W217")]
    [InlineData("symptom-works-a2", "conductor-missing:W212")]
    [InlineData("symptom-works-m3", "element-open:M4.coil-2")]
    [InlineData("symptom-quiet-m3", "conductor-missing:W205")]
    [InlineData("symptom-direction-m3", "jumper-wrong:A1.FAN-BANK-1:5 V")]
    [InlineData("symptom-rests-e1", "conductor-missing:W113")]
    [InlineData("symptom-residual-all-outputs-on", "conductor-missing:W113")]
    [InlineData("symptom-residual-switched-off", "bridge:T1.N:T1.PE")]
    [InlineData("symptom-tingle-u1-switch-on", "bond-missing:W154")]
    [InlineData("symptom-off-a4", "switch-shorted:Q1.load")]
    [InlineData("symptom-stop-s2-pressed", "conductor-missing:W216")]
    public void A_mistake_elsewhere_leaves_it_as_it_should_be(string symptom, string mistake) =>
        Assert.Equal(Right, LiveMachine.Flagship.Shown(symptom, mistake));

    [Fact]
    public void A_fan_of_24_volts_at_12_may_turn_or_not() =>
        Assert.Equal(CannotTell, LiveMachine.Flagship.Shown("symptom-works-g3", "jumper-wrong:A1.FAN-BANK-1:12 V"));

    [Fact]
    public void A_fan_of_12_volts_at_24_may_turn_or_be_destroyed() =>
        Assert.Equal(CannotTell, LiveMachine.Flagship.Shown("symptom-works-g4", "jumper-wrong:A1.FAN-BANK-2:24 V"));

    [Fact]
    public void A_switch_that_is_bridged_in_both_poles_leaves_the_machine_alive_while_off() =>
        Assert.Equal(Wrong, LiveMachine.Flagship.Shown("symptom-off-a4", Between("S1", "1", "2"), Between("S1", "3", "4")));

    [Fact]
    public void A_short_of_a_branch_opens_its_fuse_and_no_other()
    {
        var shorted = Between("A4", "24V", "0V");

        Assert.Equal(Wrong, LiveMachine.Flagship.Shown("symptom-stays-in-f8-fuse-4-switch-on", shorted));
        Assert.Equal(Right, LiveMachine.Flagship.Shown("symptom-stays-in-f8-fuse-2-switch-on", shorted));
    }

    [Fact]
    public void An_emergency_stop_that_is_bridged_does_not_take_the_power_away() =>
        Assert.Equal(Wrong, LiveMachine.Flagship.Shown("symptom-stop-s2-pressed", Between("S2", "21", "22")));

    [Fact]
    public void A_start_button_that_sticks_starts_the_router_when_the_stop_is_released()
    {
        var released = LiveMachine.Router.Campaign.Checks.First(check => check.Id.StartsWith("symptom-released-", StringComparison.Ordinal)).Id;

        Assert.Equal(Wrong, LiveMachine.Router.Shown(released, new Join(LiveMachine.Router.Node("S1", "13"), LiveMachine.Router.Node("S1", "14"), 0.01, 0.05)));
        Assert.Equal(Right, LiveMachine.Router.Shown(released, new Join(LiveMachine.Router.Node("G1", "+"), LiveMachine.Router.Node("G1", "-"), 1e6, 1e6)));
    }

    [Fact]
    public void A_joint_that_may_be_good_or_bad_is_told_only_when_both_ends_agree()
    {
        var joint = LiveMachine.Flagship.Context.JointOf(
            LiveMachine.Flagship.Context.Design.Conductors.First(conductor => conductor.Id == "W401"), new TerminalReference("E2", "1")).Index;

        Assert.Equal(CannotTell, LiveMachine.Flagship.Shown("symptom-works-e2", new AddInSeries(joint, 0.05, 1000)));
        Assert.Equal(Right, LiveMachine.Flagship.Shown("symptom-works-e2", new AddInSeries(joint, 0.05, 0.5)));
        Assert.Equal(Wrong, LiveMachine.Flagship.Shown("symptom-works-e2", new AddInSeries(joint, 500, 1000)));
    }

    [Fact]
    public void Where_a_residual_current_device_may_have_tripped_nothing_is_claimed_of_what_needs_power() =>
        Assert.Equal(CannotTell, LiveMachine.Flagship.Shown("symptom-works-a4", "bridge:T1.N:T1.PE"));

    private static Join Between(string part, string one, string other) =>
        new(LiveMachine.Flagship.Node(part, one), LiveMachine.Flagship.Node(part, other), 0.01, 0.05);
}
