using System.Numerics;
using Proveout.Engine.Electrical;

namespace Proveout.Engine.Tests.Electrical.Live;

/// <summary>Kirchhoff's and Tellegen's laws on the samples under random faults.</summary>
public sealed class LiveLawTests
{
    private const int Seed = 4711;

    [Theory]
    [InlineData("alderbrook")]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void Currents_into_every_node_add_up_to_nothing(string sample)
    {
        foreach (var solution in Solutions(sample, 40))
        {
            var circuit = solution.Changed.Circuit;
            var (direct, alternating, scale) = (new double[circuit.NodeCount], new Complex[circuit.NodeCount], 1.0);
            foreach (var branch in circuit.Branches)
            {
                var (dc, ac) = (solution.DcAmperes(branch.Index), solution.AcAmperes(branch.Index));
                scale = Math.Max(scale, Math.Max(Math.Abs(dc), ac.Magnitude));
                Leave(direct, alternating, branch.A, dc, ac);
                Leave(direct, alternating, branch.B, -dc, -ac);
            }

            foreach (var (a, b, siemens) in solution.Changed.Joins)
            {
                var (dc, ac) = ((solution.DcVolts(a) - solution.DcVolts(b)) * siemens, (solution.AcVolts(a) - solution.AcVolts(b)) * siemens);
                Leave(direct, alternating, a, dc, ac);
                Leave(direct, alternating, b, -dc, -ac);
            }

            // What leaks to earth and what a limited source keeps as conductance stay below a tenth of a milliampere. A piece of metal that only
            // leaks hold knows its potential to 0.2 mV (twelve decades of conductance in sixteen digits), so a stiff contact in it shows that much.
            var stiffest = solution.Changed.Joins.Select(join => join.Siemens).DefaultIfEmpty(0).Max();
            var allowed = (2e-4 * scale) + (2e-4 * stiffest);
            Assert.All(direct, amperes => Assert.InRange(Math.Abs(amperes), 0, allowed));
            Assert.All(alternating, amperes => Assert.InRange(amperes.Magnitude, 0, allowed));
        }
    }

    [Fact]
    public void Mains_gives_as_much_power_as_all_else_takes()
    {
        foreach (var solution in Solutions("alderbrook", 40))
        {
            var circuit = solution.Changed.Circuit;
            var (given, taken) = (0.0, 0.0);
            foreach (var branch in circuit.Branches)
            {
                var across = LiveBalance.Ac(solution.Point, branch.A) - LiveBalance.Ac(solution.Point, branch.B);
                var power = (across * Complex.Conjugate(solution.AcAmperes(branch.Index))).Real;
                if (branch.Kind == LiveBranchKind.Mains)
                    given -= power;
                else
                    taken += power;
            }

            foreach (var (a, b, siemens) in solution.Changed.Joins)
                taken += Math.Pow((solution.AcVolts(a) - solution.AcVolts(b)).Magnitude, 2) * siemens;
            Assert.Equal(given, taken, Math.Max(0.01, 1e-3 * given));
        }
    }

    [Theory]
    [InlineData("alderbrook")]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void The_sound_machine_comes_to_rest_in_every_state_and_nothing_interrupts(string sample)
    {
        var model = LiveSamples.Model(sample);

        Assert.All(model.States, state => Assert.True(model.Sound(state).Settled, state.Name));
        Assert.All(model.States, state => Assert.Empty(model.Sound(state).Trips));
    }

    [Theory]
    [InlineData("alderbrook")]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void Without_mistakes_there_is_no_finding(string sample) => Assert.Empty(LiveSamples.Of(sample).FindingsOf([]));

    private static void Leave(double[] direct, Complex[] alternating, int node, double dc, Complex ac)
    {
        if (node < 0)
            return;
        direct[node] -= dc;
        alternating[node] -= ac;
    }

    private static IEnumerable<LiveSolution> Solutions(string sample, int count)
    {
        var model = LiveSamples.Model(sample);
        var faults = LiveSamples.Faults(model);
        var random = new Random(Seed);
        return Enumerable.Range(0, count).Select(_ => model.Solve(model.States[random.Next(model.States.Count)], faults[random.Next(faults.Length)].Changes))
            .Where(solution => solution.Settled);
    }
}
