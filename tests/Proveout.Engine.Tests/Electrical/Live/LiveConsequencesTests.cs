using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Electrical.Live;

public sealed class LiveConsequencesTests
{
    [Theory]
    [InlineData("alderbrook", "bond-missing:W156", LiveFindingKind.ProtectionMissing, Severity.Shock)]
    [InlineData("alderbrook", "bond-missing:W203", LiveFindingKind.ProtectionMissing, Severity.Shock)]
    [InlineData("alderbrook", "ends-swapped:W106:W152:T1.N:T1.PE", LiveFindingKind.ProtectionMissing, Severity.Shock)]
    [InlineData("alderbrook", "bridge:T1.N:T1.PE", LiveFindingKind.ProtectiveCurrent, Severity.Shock)]
    [InlineData("alderbrook", "line-neutral-swapped:W103:W104:S1.2:S1.4", LiveFindingKind.LiveWhenOff, Severity.Shock)]
    [InlineData("alderbrook", "bridge:F2.1:F2.2", LiveFindingKind.ProtectionBypassed, Severity.Fire)]
    [InlineData("alderbrook", "bridge:S2.11:S2.12", LiveFindingKind.OnUncommanded, Severity.Fire)]
    [InlineData("alderbrook", "bridge:S1.2:S1.4", LiveFindingKind.ProtectionInterrupts, Severity.Damage)]
    [InlineData("alderbrook", "jumper-wrong:A1.FAN-BANK-2:24 V", LiveFindingKind.OverVoltage, Severity.Damage)]
    [InlineData("alderbrook", "part-reversed:W513:W514:G1.+:G1.-", LiveFindingKind.ReverseVoltage, Severity.Damage)]
    [InlineData("alderbrook", "conductor-missing:W106", LiveFindingKind.TooLittlePower, Severity.DoesNotWork)]
    [InlineData("alderbrook", "conductor-missing:W632", LiveFindingKind.WrongConnection, Severity.DoesNotWork)]
    [InlineData("quarrymoor", "line-neutral-swapped:W101:W102:F1.1:F1.N-IN", LiveFindingKind.LiveWhenOff, Severity.Shock)]
    [InlineData("quarrymoor", "bridge:S1.13:S1.14", LiveFindingKind.OnUncommanded, Severity.Damage)]
    public void A_mistake_has_the_finding_and_the_severity_that_its_figures_give(string sample, string fault, LiveFindingKind kind, Severity severity)
    {
        var findings = LiveSamples.Of(sample).FindingsOf(LiveSamples.Fault(sample, fault).Changes);

        Assert.Contains(findings, finding => finding.Kind == kind && finding.Severity == severity);
        Assert.Equal(severity, findings[0].Severity);
    }

    // What cannot be worse is left out while the worst is looked for; that must not alter which it is.
    [Theory]
    [InlineData("pennywort", 1)]
    [InlineData("quarrymoor", 3)]
    [InlineData("alderbrook", 17)]
    public void The_worst_alone_is_the_first_of_all_findings(string sample, int every)
    {
        var consequences = LiveSamples.Of(sample);
        foreach (var fault in LiveSamples.Faults(LiveSamples.Model(sample)).Where((_, index) => index % every == 0))
            Assert.Equal(consequences.FindingsOf(fault.Changes) is [var first, ..] ? first : null, consequences.WorstOf(fault.Changes));
    }

    // Faults that are electrically the same are simulated once; a person reads of each what it does by itself.
    [Theory]
    [InlineData("pennywort", 1)]
    [InlineData("quarrymoor", 4)]
    [InlineData("alderbrook", 9)]
    public void Of_many_faults_each_does_what_it_does_by_itself(string sample, int every)
    {
        var consequences = LiveSamples.Of(sample);
        var faults = LiveSamples.Faults(LiveSamples.Model(sample));
        var all = consequences.OfAll(faults, TestContext.Current.CancellationToken);
        for (var at = 0; at < faults.Length; at++)
            if (at % every == 0)
                Assert.Equal(consequences.Of(faults[at].Changes), all[at]);
    }

    [Fact]
    public void A_joint_the_copper_and_the_plug_contact_of_one_conductor_stand_in_series()
    {
        var model = LiveSamples.Model("alderbrook");
        var series = LiveConsequences.SeriesIn(model);
        var cuts = new[] { "contact-pushed-back:A2.HEAT+", "conductor-missing:W401" }
            .Select(fault => series.AtFirst(Assert.Single(LiveSamples.Fault("alderbrook", fault).Changes)));

        Assert.Single(cuts.Distinct());
    }

    [Fact]
    public void A_bridge_stands_in_series_with_nothing()
    {
        var bridge = Assert.Single(LiveSamples.Fault("alderbrook", "bridge:F2.1:F2.2").Changes);

        Assert.Same(bridge, LiveConsequences.SeriesIn(LiveSamples.Model("alderbrook")).AtFirst(bridge));
    }

    [Theory]
    [InlineData("pennywort", 1)]
    [InlineData("quarrymoor", 7)]
    public void A_mistake_is_as_bad_as_a_severity_when_its_worst_finding_is(string sample, int every)
    {
        var consequences = LiveSamples.Of(sample);
        foreach (var fault in LiveSamples.Faults(LiveSamples.Model(sample)).Where((_, index) => index % every == 0))
            foreach (var least in (Severity[])[Severity.Damage, Severity.Fire, Severity.Shock])
                Assert.Equal(consequences.WorstOf(fault.Changes)?.Severity >= least, consequences.IsAsBadAs(fault.Changes, least));
    }

    [Theory]
    [InlineData("line-neutral-swapped:W105:W106:T1.L:T1.N")]
    [InlineData("ends-swapped:W401:W402:A2.HEAT+:A2.HEAT-")]
    [InlineData("ends-swapped:W503:W504:X12.B1:X12.B2")]
    public void Exchanging_the_ends_of_what_has_no_polarity_changes_nothing(string fault) =>
        Assert.Empty(LiveSamples.Of("alderbrook").FindingsOf(LiveSamples.Fault("alderbrook", fault).Changes));

    // P = U²/R: 0.27 times the resistance takes 3.7 times the power; the mains and its leads drop some of it.
    [Fact]
    public void A_mat_for_120_volts_takes_three_and_a_half_times_its_power_at_230()
    {
        var finding = LiveSamples.Of("alderbrook").FindingsOf(LiveSamples.Fault("alderbrook", "wrong-value:E1.element:0.27").Changes)[0];

        Assert.Equal((LiveFindingKind.TooMuchPower, Severity.Fire), (finding.Kind, finding.Severity));
        Assert.Equal(3.6, finding.Value / finding.Limit, 0.15);
    }

    [Fact]
    public void Every_fault_of_every_sample_has_a_consequence_in_a_sentence()
    {
        foreach (var sample in new[] { "pennywort", "quarrymoor" })
        {
            var faults = LiveSamples.Faults(LiveSamples.Model(sample));
            var consequences = LiveSamples.Of(sample).OfAll(faults, CancellationToken.None);

            Assert.Equal(faults.Length, consequences.Length);
            Assert.All(consequences, consequence => Assert.EndsWith(".", consequence.Sentence));
        }
    }

    [Fact]
    public void With_the_inlet_apart_nothing_is_live()
    {
        var model = LiveSamples.Model("alderbrook");
        var stage = LiveStage.WithApart(model.Context, "unplugged", [("X1", "PINS")]);

        Assert.All(model.States, state => Assert.All(
            model.Sound(state, stage).Supplies.Where(supply => supply.Part == "T1"), supply => Assert.False(supply.IsAlive)));
    }

    [Fact]
    public void With_the_outputs_of_the_supply_taken_off_it_lives_unloaded()
    {
        var model = LiveSamples.Model("alderbrook");
        var stage = LiveStage.WithApart(model.Context, "supply unloaded", [("F8", "BRANCHES")]);
        var supply = model.Sound(LiveSamples.State(model, ControlStateKind.Idle), stage).Supplies.Single(found => found.Part == "T1");

        Assert.True(supply.IsAlive);
        Assert.InRange(supply.Volts, 23.9, 24.1);
        Assert.InRange(supply.Amperes, 0, 0.1);
    }
}
