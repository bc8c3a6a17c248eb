using System.Numerics;
using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Live;

/// <summary>Worked examples of touch voltage: a dead short from line to a metal frame.</summary>
public sealed class TouchVoltageTests
{
    // Ohm's law round the loop: 230 V over 10 and 20 ohm of electrodes is 7.7 A, which leaves 153 V on the installation's electrode
    // (the usual example of a TT system in handbooks of low-voltage installations). The line's own 0.1 ohm takes 0.8 V of it.
    [Fact]
    public void In_a_TT_system_the_frame_rises_to_what_its_electrode_drops_and_only_a_residual_current_device_helps()
    {
        var model = Model(new(230, 50, SystemEarthing.TT, new Complex(0.1, 0), 0.1, 0, 20, 10, 16, FuseCurve.BreakerB, 0.03));
        var solution = model.Solve(Idle(model), LineToFrame(model));

        Assert.Equal(230 * 20.0 / 30, Frame(model, solution.AtFirst!), 2.0);
        Assert.Equal(7.7, solution.AtFirst!.ResidualAmperes, 0.1);
        Assert.True(solution.Trips[0].IsResidual);
        Assert.Equal(0.04, solution.Trips[0].Seconds, 1e-9);
        Assert.InRange(Frame(model, solution), 0, 50);
    }

    [Fact]
    public void In_a_TT_system_without_a_residual_current_device_the_frame_stays_live()
    {
        var model = Model(new(230, 50, SystemEarthing.TT, new Complex(0.1, 0), 0.1, 0, 20, 10, 16, FuseCurve.BreakerB, null));
        var solution = model.Solve(Idle(model), LineToFrame(model));

        Assert.Empty(solution.Trips);
        Assert.InRange(Frame(model, solution), 140, 160);
        Assert.Contains(new LiveConsequences(model).FindingsOf(LineToFrame(model)), finding => finding is
        {
            Kind: LiveFindingKind.TouchVoltage, Severity: Proveout.Engine.Faults.Severity.Shock, Limit: 50,
        });
    }

    // Line and protective conductor of 0.5 ohm each up to the outlet, 0.14 ohm of fuse, switch and copper in the machine: the loop is a divider
    // (IEC 60364-4-41 clause 411.4.4, loop impedance), and the contact lies at 230 V x 0.5 / 1.14.
    [Fact]
    public void In_a_TN_system_with_equal_conductors_the_frame_rises_to_nearly_half_the_voltage_until_the_breaker_interrupts()
    {
        var model = Model(new(230, 50, SystemEarthing.TnS, new Complex(0.5, 0), 0.5, 0, 0.5, 1, 16, FuseCurve.BreakerB, null));
        var solution = model.Solve(Idle(model), LineToFrame(model));
        var outlet = model.Context.Wiring.LandingNode(new("X1", "PE-PIN"));

        Assert.Equal(230 * 0.5 / 1.14, solution.AtFirst!.AcVolts(outlet).Magnitude, 3.0);
        Assert.NotEmpty(solution.Trips);
        Assert.True(solution.Trips[0].Seconds <= 0.4);
        Assert.InRange(Frame(model, solution), 0, 5);
    }

    // 230 V over a leak of 1 kilohm is 0.23 A: no breaker of 16 A sees it, a device of 30 mA trips (IEC 61008-1: at its rated residual current at the latest).
    [Fact]
    public void A_residual_current_device_that_the_machine_file_names_is_counted_on_in_a_TN_system_too()
    {
        var supply = Repository.Design("alderbrook").Mains!;
        var guarded = Model(MainsSource.Of(supply with { ResidualCurrent = UnitsNet.ElectricCurrent.FromMilliamperes(30) }));
        var unguarded = Model(MainsSource.Of(supply));

        Assert.Empty(unguarded.Solve(Idle(unguarded), Leak(unguarded)).Trips);
        Assert.True(Assert.Single(guarded.Solve(Idle(guarded), Leak(guarded)).Trips).IsResidual);
    }

    // Neutral and protective conductor joined at the inlet: the load current divides between the neutral conductor and both electrodes in series, so of
    // I the share R_N / (R_N + R_A + R_B) returns through earth (current divider). The electrode is chosen to give the residual current of the row.
    // IEC 61008-1: a device of 30 mA must not interrupt below 15 mA and must from 30 mA, within 0.3 s; table 41.1 of IEC 60364-4-41 asks for 0.2 s in a TT
    // system only where the touch voltage exceeds 50 V, and here it stays at R_A times the residual current, a few volts.
    [Theory]
    [InlineData(0.012, false, false)]
    [InlineData(0.020, false, true)]
    [InlineData(0.040, true, true)]
    [InlineData(0.160, true, true)]
    public void In_a_TT_system_neutral_on_the_protective_conductor_makes_the_residual_current_device_interrupt_from_its_rated_current(
        double residualAmperes, bool interrupts, bool isNamed)
    {
        var mains = new MainsSource(230, 50, SystemEarthing.TT, new Complex(0.4, 0), 3, 0, 20, 10, 16, FuseCurve.BreakerB, 0.03);
        var sound = Model(mains);
        var returning = sound.Circuit.Branches.Single(branch => branch is { Subject: MainsBranches.Subject, Name: MainsBranches.Neutral });
        var load = sound.Sound(AllOn(sound)).AcAmperes(returning.Index).Magnitude;
        var model = Model(mains with { ProtectiveOhms = (load * mains.NeutralOhms / residualAmperes) - mains.NeutralOhms - mains.SourceEarthOhms });
        ElementChange[] joined =
            [new Join(model.Context.Wiring.LandingNode(new("X1", "N-PIN")), model.Context.Wiring.LandingNode(new("X1", "PE-PIN")), 0.001, 0.001)];

        var solution = model.Solve(AllOn(model), joined);
        var findings = new LiveConsequences(model).FindingsOf(joined);

        Assert.Equal(residualAmperes, (solution.AtFirst ?? solution).ResidualAmperes, 0.02 * residualAmperes);
        Assert.Equal(interrupts, solution.Trips.Any(trip => trip is { IsResidual: true, Seconds: <= 0.3 }));
        Assert.Equal(isNamed, findings.Any(finding => finding is
        {
            Kind: LiveFindingKind.ProtectionInterrupts, Subject: MainsBranches.Subject, State.Kind: ControlStateKind.AllOutputs,
        }));
        Assert.DoesNotContain(findings, finding => finding.Kind == LiveFindingKind.TouchVoltage);
    }

    private static LiveModel Model(MainsSource mains) =>
        new(new WiringContext(WiringNetworkBuilder.Build(Repository.Design("alderbrook"))), mains);

    private static ControlState Idle(LiveModel model) => LiveSamples.State(model, ControlStateKind.Idle);

    private static ControlState AllOn(LiveModel model) => LiveSamples.State(model, ControlStateKind.AllOutputs);

    private static ElementChange[] LineToFrame(LiveModel model) => LineToFrame(model, 0.001);

    private static ElementChange[] Leak(LiveModel model) => LineToFrame(model, 1000);

    private static ElementChange[] LineToFrame(LiveModel model, double ohms) =>
        [new Join(model.Context.Wiring.TerminalNode(new("X2", "5")), model.Context.Wiring.TerminalNode(new("U1", "METAL")), ohms, ohms)];

    private static double Frame(LiveModel model, LiveSolution solution) =>
        solution.AcVolts(model.Context.Wiring.TerminalNode(new("U1", "METAL"))).Magnitude;
}
