using Proveout.Engine.Electrical;

namespace Proveout.Engine.Tests.Electrical.Live;

/// <summary>Live states of the flagship, sound and under random faults, against ngspice, which solves the same branches by its own method.</summary>
[Collection(nameof(AloneCollection))]
public sealed class SpiceTests(ITestOutputHelper output)
{
    private const int Seed = 20261127;
    private const int FaultCount = 100;

    [Fact]
    public void Direct_potentials_under_a_hundred_random_faults_are_those_of_ngspice()
    {
        Assert.SkipUnless(Spice.Program is not null, "ngspice is not installed (apt-get install ngspice, or set PROVEOUT_NGSPICE): direct potentials are NOT checked against it.");
        var worst = 0.0;
        foreach (var solution in Solutions(direct: true))
        {
            var oracle = Spice.Direct(solution);
            Assert.NotEmpty(oracle);
            AssertModesFit(solution, oracle);
            foreach (var (node, volts) in oracle.Where(item => item.Key < solution.Changed.Circuit.NodeCount))
                worst = Math.Max(worst, Math.Abs(volts - solution.DcVolts(node)) / (1 + Math.Abs(volts)));
        }

        output.WriteLine($"{FaultCount} states compared, largest deviation {worst:E1}.");
        Assert.InRange(worst, 0, 5e-3);
    }

    [Fact]
    public void Alternating_potentials_under_a_hundred_random_faults_are_those_of_ngspice()
    {
        Assert.SkipUnless(Spice.Program is not null, "ngspice is not installed (apt-get install ngspice, or set PROVEOUT_NGSPICE): alternating potentials are NOT checked against it.");
        var worst = 0.0;
        foreach (var solution in Solutions(direct: false))
        {
            var oracle = Spice.Alternating(solution);
            Assert.NotEmpty(oracle);
            foreach (var (node, volts) in oracle.Where(item => item.Key < solution.Changed.Circuit.NodeCount))
                worst = Math.Max(worst, (volts - solution.AcVolts(node)).Magnitude / (1 + volts.Magnitude));
        }

        output.WriteLine($"{FaultCount} states compared, largest deviation {worst:E1}.");
        Assert.InRange(worst, 0, 1e-4);
    }

    // With the potentials of ngspice: no open junction sees more than its forward voltage, none conducts backwards, no source gives more than its limit.
    private static void AssertModesFit(LiveSolution solution, Dictionary<int, double> oracle)
    {
        double At(int node) => node < 0 ? 0 : oracle[node];
        foreach (var branch in solution.Changed.Circuit.Branches)
        {
            var (mode, across) = (solution.Point.Mode[branch.Index], At(branch.A) - At(branch.B));
            if (branch.Kind == LiveBranchKind.Junction && solution.Changed.Siemens[branch.Index] > 0)
                Assert.True(mode == LivePoint.On ? across > branch.Volts - 0.01 : across < branch.Volts + 0.01, $"{branch.Subject}.{branch.Name}: {across} V");
            else if (branch.Kind == LiveBranchKind.Supply && mode == LivePoint.On)
                Assert.True((branch.Volts - across) * branch.Siemens < (branch.LimitAmperes * 1.01) + 0.5, $"{branch.Subject}.{branch.Name}: {across} V");
            else if (branch.Kind == LiveBranchKind.Supply && mode == LivePoint.Limiting)
                Assert.True(across < branch.Volts + 0.01, $"{branch.Subject}.{branch.Name}: {across} V");
        }
    }

    // Random faults, each in a random state that it changes.
    private static IEnumerable<LiveSolution> Solutions(bool direct)
    {
        var model = LiveSamples.Model("alderbrook");
        var faults = LiveSamples.Faults(model);
        var random = new Random(Seed);
        for (var found = 0; found < FaultCount;)
        {
            var (fault, state) = (faults[random.Next(faults.Length)], model.States[random.Next(model.States.Count)]);
            var (solution, sound) = (model.Solve(state, fault.Changes), model.Sound(state));
            if (ReferenceEquals(solution, sound) || !solution.Settled || (!direct && ReferenceEquals(solution.Point.AcVolts, sound.Point.AcVolts)))
                continue;
            found++;
            yield return solution;
        }
    }
}
