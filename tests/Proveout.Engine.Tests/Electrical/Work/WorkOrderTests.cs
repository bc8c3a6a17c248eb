using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Work;

public sealed class WorkOrderTests
{
    private static readonly MachineDesign Design = Repository.Design("pennywort");

    private static readonly WiringContext Context = new(WiringNetworkBuilder.Build(Design));

    private static readonly IReadOnlyList<WorkStep> Steps = WorkOrder.Of(Context);

    [Fact]
    public void Protective_conductors_come_first_and_mains_next() =>
        Assert.Equal([WorkStage.ProtectiveBonding, WorkStage.Mains], WorkOrder.Of(new(WiringNetworkBuilder.Build(Repository.Design("alderbrook")))).Take(2).Select(step => step.Stage));

    [Fact]
    public void Mains_is_fitted_from_the_inlet_inwards()
    {
        var mains = WorkOrder.Of(new(WiringNetworkBuilder.Build(Repository.Design("alderbrook"))))[1].Conductors.Select(conductor => conductor.Id).ToList();
        Assert.True(mains.IndexOf("W101") < mains.IndexOf("W103") && mains.IndexOf("W103") < mains.IndexOf("W109") && mains.IndexOf("W109") < mains.IndexOf("W117"));
    }

    [Fact]
    public void Supplies_are_fitted_from_their_source_outwards_though_a_board_makes_a_supply_of_its_own()
    {
        var supplies = Steps.Single(step => step.Stage == WorkStage.Supplies).Conductors.Select(conductor => conductor.Id).ToList();
        Assert.True(supplies.IndexOf("W1") < supplies.IndexOf("W3") && supplies.IndexOf("W3") < supplies.IndexOf("W5") && supplies.IndexOf("W5") < supplies.IndexOf("W6"), string.Join(' ', supplies));
    }

    [Fact]
    public void Both_wires_of_a_sensor_are_fitted_together()
    {
        var signals = WorkOrder.Of(new(WiringNetworkBuilder.Build(Repository.Design("alderbrook")))).Single(step => step.Between == "A1 and B8");
        Assert.Equal((WorkStage.Signals, "W505 W506"), (signals.Stage, string.Join(' ', signals.Conductors.Select(conductor => conductor.Id))));
    }

    [Fact]
    public void Every_conductor_is_in_one_step() =>
        Assert.Equal(Design.Conductors.Select(conductor => conductor.Id).Order(StringComparer.Ordinal), Steps.SelectMany(step => step.Conductors).Select(conductor => conductor.Id).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_check_is_ready_after_one_step_and_reads_then_what_it_reads_when_all_is_wired()
    {
        var campaign = new WiringCampaign(Design);
        var dictionary = campaign.Run(TestContext.Current.CancellationToken);
        var ready = WorkChecks.After(Context, Steps, dictionary.Checks);
        Assert.Equal(dictionary.Checks.Select(check => check.Id).Order(StringComparer.Ordinal), ready.SelectMany(checks => checks).Select(check => check.Id).Order(StringComparer.Ordinal));

        // The machine as far as it is wired, as a machine of its own, with readings asked for one by one.
        var fitted = new List<Conductor>();
        foreach (var (step, checks) in Steps.Zip(ready).SkipLast(1))
        {
            fitted.AddRange(step.Conductors);
            var unfinished = Design with { Conductors = fitted.ToValueList() };
            foreach (var group in checks.GroupBy(check => check.SetUp))
            {
                var readings = new ExpectedReadings(unfinished, DeadSetUps.Of(Design).Single(setUp => setUp.Text.Id == group.Key));
                foreach (var check in group.Where(check => check.Kind == MeterMode.Resistance.Kind))
                    Assert.Equal(check.Expectation, readings.Between(check.Points[0], check.Points[1]).RedOnFirst.Ohms);
            }
        }
    }

    [Fact]
    public void Most_checks_need_not_wait_for_the_last_step()
    {
        var dictionary = new WiringCampaign(Design).Run(TestContext.Current.CancellationToken);
        var plan = CheckPlan.Of(dictionary, onlyGreedy: true);
        var ready = WorkChecks.After(Context, Steps, plan.Checks.Select(check => dictionary.Checks[check]));
        Assert.True(ready.SkipLast(1).Sum(checks => checks.Count) > 3 * ready[^1].Count);
    }
}
