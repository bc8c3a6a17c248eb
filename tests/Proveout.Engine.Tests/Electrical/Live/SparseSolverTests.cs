using System.Numerics;
using Proveout.Engine.Electrical;

namespace Proveout.Engine.Tests.Electrical.Live;

/// <summary>The factor that is kept from fault to fault against one that is made anew for each.</summary>
public sealed class SparseSolverTests
{
    private const int Seed = 907;

    // Far more than real insulation lets through, so that sixteen digits are enough to compare nine of every potential.
    private const double LeakSiemens = 1e-3;

    [Theory]
    [InlineData("alderbrook")]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void Direct_potentials_after_changes_and_new_contacts_are_those_of_a_network_factored_anew(string sample) =>
        Compare<double>(LiveSamples.Model(sample).Circuit, siemens => siemens, Math.Abs);

    [Theory]
    [InlineData("alderbrook")]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void Alternating_potentials_after_changes_and_new_contacts_are_those_of_a_network_factored_anew(string sample) =>
        Compare<Complex>(LiveSamples.Model(sample).Circuit, siemens => new Complex(siemens, siemens / 3), value => value.Magnitude);

    [Fact]
    public void A_contact_taken_away_leaves_the_potentials_of_before()
    {
        var circuit = LiveSamples.Model("pennywort").Circuit;
        var solver = new SparseSolver<double>(circuit.Pattern, LeakSiemens);
        foreach (var branch in circuit.Branches)
            solver.Set(branch.Index, branch.Siemens);
        var injected = new double[circuit.NodeCount];
        injected[0] = 1;
        var (before, joined, after) = (new double[circuit.NodeCount], new double[circuit.NodeCount], new double[circuit.NodeCount]);

        solver.Solve(injected, before);
        solver.Join([(0, circuit.NodeCount - 1, 100)]);
        solver.Solve(injected, joined);
        solver.Join([]);
        solver.Solve(injected, after);

        Assert.Equal(before, after);
        Assert.NotEqual(before, joined);
    }

    [Fact]
    public void Potentials_asked_for_later_are_those_of_all_asked_for_at_once()
    {
        var circuit = LiveSamples.Model("pennywort").Circuit;
        var solver = new SparseSolver<double>(circuit.Pattern, LeakSiemens);
        foreach (var branch in circuit.Branches)
            solver.Set(branch.Index, branch.Siemens);
        solver.Join([(3, circuit.NodeCount - 1, 100)]);
        var injected = new double[circuit.NodeCount];
        injected[0] = 1;
        var (whole, parts) = (new double[circuit.NodeCount], new double[circuit.NodeCount]);
        var asked = circuit.Pattern.Above([5, circuit.NodeCount / 2]);

        solver.Solve(injected, whole);
        solver.Solve(injected, circuit.Pattern.Above([0]), asked, parts);
        solver.SolveFurther(circuit.Pattern.Except(asked), parts);

        Assert.Equal(whole, parts);
        Assert.NotEqual(asked.Length, circuit.NodeCount);
    }

    private static void Compare<T>(LiveCircuit circuit, Func<double, T> admittance, Func<T, double> size)
        where T : struct, INumberBase<T>
    {
        var random = new Random(Seed);
        var kept = new SparseSolver<T>(circuit.Pattern, T.CreateChecked(LeakSiemens));
        var admittances = new T[circuit.Branches.Length];
        foreach (var branch in circuit.Branches)
            admittances[branch.Index] = admittance(branch.Siemens);
        for (var turn = 0; turn < 60; turn++)
        {
            // Few branches change from turn to turn, as with faults; contacts stay for two turns.
            foreach (var branch in circuit.Branches)
                if (turn == 0 || random.Next(200) == 0)
                    admittances[branch.Index] = random.Next(3) == 0 ? T.Zero : admittance(branch.Siemens);
            if (turn % 2 == 0)
                kept.Join(RandomJoins(random, circuit.NodeCount));
            var joins = kept.Joins;
            var injected = new T[circuit.NodeCount];
            for (var source = 0; source < 5; source++)
                injected[random.Next(circuit.NodeCount)] = admittance(random.NextDouble());

            var (potentials, anew) = (new T[circuit.NodeCount], SolvedAnew(circuit, admittances, joins, injected));
            for (var branch = 0; branch < admittances.Length; branch++)
                kept.Set(branch, admittances[branch]);
            kept.Solve(injected, potentials);

            var most = anew.Max(size);
            Assert.True(most > 0);
            for (var node = 0; node < potentials.Length; node++)
                Assert.InRange(size(potentials[node] - anew[node]), 0, 1e-9 * most);
        }
    }

    private static T[] SolvedAnew<T>(LiveCircuit circuit, T[] admittances, (int A, int B, double Siemens)[] joins, T[] injected)
        where T : struct, INumberBase<T>
    {
        (int A, int B)[] ends = [.. circuit.Branches.Select(branch => (branch.A, branch.B)), .. joins.Select(join => (join.A, join.B))];
        var solver = new SparseSolver<T>(new SparsePattern(circuit.Pattern.Position, ends), T.CreateChecked(LeakSiemens));
        for (var branch = 0; branch < admittances.Length; branch++)
            solver.Set(branch, admittances[branch]);
        for (var join = 0; join < joins.Length; join++)
            solver.Set(admittances.Length + join, T.CreateChecked(joins[join].Siemens));
        var potentials = new T[circuit.NodeCount];
        solver.Solve(injected, potentials);
        return potentials;
    }

    private static (int A, int B, double Siemens)[] RandomJoins(Random random, int nodes) =>
    [
        .. Enumerable.Range(0, random.Next(6))
            .Select(_ => (A: random.Next(nodes), B: random.Next(-1, nodes), Siemens: Math.Pow(10, random.Next(-3, 4))))
            .Where(join => join.A != join.B),
    ];
}
