using MathNet.Numerics.LinearAlgebra;
using Proveout.Engine.Electrical;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Every reading of the largest sample, sound and faulty, against MathNet.Numerics' dense solvers, set up on their own from the list of elements.</summary>
public sealed class WholeNetworkTests(ITestOutputHelper output)
{
    private const double RelativeTolerance = 1e-6;
    private const int FaultCount = 300;
    private const int Seed = 20261125;

    private static readonly Lazy<WiringCampaign> Campaign = new(() => new WiringCampaign(Repository.Design("alderbrook")));

    [Fact]
    public void Every_reading_of_the_sound_machine_is_that_of_a_dense_solver()
    {
        var worst = new Deviation();
        foreach (var (table, state) in SetUps())
        {
            var wiring = Dense(state, null);
            for (var index = 0; index < table.Candidates.Length; index++)
                worst.Compare(wiring.Limits(table.Candidates[index]), table.Good[index], table.Candidates[index].Check.Id, "no fault");
        }

        output.WriteLine(worst.ToString());
        Assert.InRange(worst.Relative, 0, RelativeTolerance);
    }

    [Fact]
    public void Every_reading_under_three_hundred_random_faults_is_that_of_a_dense_solver()
    {
        var worst = new Deviation();
        var faults = RandomFaults();
        foreach (var (table, state) in SetUps())
        {
            var worker = new PortWorker(table);
            foreach (var fault in faults)
            {
                worker.Apply(fault);
                var wiring = Dense(state, fault);
                for (var index = 0; index < table.Candidates.Length; index++)
                    worst.Compare(wiring.Limits(table.Candidates[index]), worker.LimitsOf(index), table.Candidates[index].Check.Id, fault.Fault.Id);
            }
        }

        output.WriteLine(worst.ToString());
        Assert.InRange(worst.Relative, 0, RelativeTolerance);
    }

    [Fact]
    public void Readings_of_metal_are_those_of_the_nodal_conductance_matrix_solved_by_dense_LU()
    {
        // The ground stands at the port's own black lead, so that potentials are of the port's size and sixteen digits carry ports below a kilohm.
        var random = new Random(Seed);
        var (table, state) = SetUps().First();
        var worker = new PortWorker(table);
        foreach (var fault in RandomFaults().Take(12))
        {
            worker.Apply(fault);
            var index = Enumerable.Range(0, table.Candidates.Length).OrderBy(_ => random.Next()).First(port => worker.LimitsOf(port).HighOhms < 1000);
            var (a, b) = (table.Candidates[index].A, table.Candidates[index].B);
            Assert.Equal(1, worker.LimitsOf(index).HighOhms / NodalReading(new FaultyWiring(Campaign.Value.Context.Wiring, state, fault).High, a, b), RelativeTolerance);
            Assert.Equal(1, worker.LimitsOf(index).LowOhms / NodalReading(new FaultyWiring(Campaign.Value.Context.Wiring, state, fault).Low, a, b), RelativeTolerance);
        }
    }

    [Fact]
    public void The_dictionary_holds_what_the_meter_shows_of_those_readings()
    {
        var dictionary = Campaign.Value.Run();
        var (table, _) = SetUps().First();
        var worker = new PortWorker(table);
        for (var fault = 0; fault < dictionary.Faults.Count; fault += 7)
        {
            worker.Apply(Campaign.Value.Faults[fault]);
            for (var index = 0; index < table.Candidates.Length; index++)
            {
                var isListed = dictionary.ResponseOf(fault).At(table.FirstCheck + index) is not null;
                if (isListed || !IsSame(table.Good[index], worker.LimitsOf(index)))
                    Assert.Equal(table.Candidates[index].Mode.Shown(worker.LimitsOf(index).LowOhms, worker.LimitsOf(index).HighOhms), dictionary.IntervalOf(fault, table.FirstCheck + index));
            }
        }
    }

    [Fact]
    public void A_bridge_across_an_open_port_is_in_the_dictionary()
    {
        var dictionary = Campaign.Value.Run();
        var (table, _) = SetUps().First();
        var worker = new PortWorker(table);
        var bridge = Campaign.Value.Faults.Index().First(item => item.Item.Fault.Kind == "bridge" && ClosesAnOpenPort(item.Item)).Index;
        Assert.Contains(dictionary.ChecksThatCatch(bridge), check => dictionary.Checks[check].Expectation.IsOverRangeOnly);

        bool ClosesAnOpenPort(WiringFault fault) =>
            worker.Apply(fault)
            && Enumerable.Range(0, table.Candidates.Length).Any(port => double.IsPositiveInfinity(table.Good[port].LowOhms) && worker.LimitsOf(port).HighOhms < 1);
    }

    private static IEnumerable<(PortTable Table, MachineState State)> SetUps() =>
        Campaign.Value.PortTables().Zip(DeadSetUps.Of(Campaign.Value.Context.Design), (table, setUp) => (table, setUp.State));

    // At least one of every kind, so that no rule goes untried.
    private static WiringFault[] RandomFaults()
    {
        var shuffled = Campaign.Value.Faults.ToArray();
        new Random(Seed).Shuffle(shuffled);
        return [.. shuffled.DistinctBy(fault => fault.Fault.Kind).Concat(shuffled).Distinct().Take(FaultCount)];
    }

    private static DenseWiring Dense(MachineState state, WiringFault? fault) =>
        new(Campaign.Value.Context.Wiring, new FaultyWiring(Campaign.Value.Context.Wiring, state, fault));

    private static double NodalReading(Resistor[] resistors, int a, int b)
    {
        var forest = new SpanningForest(Campaign.Value.Context.Wiring.Nodes.Count, resistors);
        var nodes = Enumerable.Range(0, Campaign.Value.Context.Wiring.Nodes.Count).Where(node => node != b && forest.AreTogether(node, b)).ToArray();
        var row = nodes.Index().ToDictionary(item => item.Item, item => item.Index);
        var conductance = Matrix<double>.Build.Dense(nodes.Length, nodes.Length);
        foreach (var resistor in resistors)
            foreach (var (one, two) in new[] { (resistor.A, resistor.B), (resistor.B, resistor.A) })
                if (row.TryGetValue(one, out var here))
                {
                    conductance[here, here] += 1 / resistor.Ohms;
                    if (row.TryGetValue(two, out var there))
                        conductance[here, there] -= 1 / resistor.Ohms;
                }

        return conductance.LU().Solve(Vector<double>.Build.Dense(nodes.Length, node => node == row[a] ? 1 : 0))[row[a]];
    }

    private static bool IsSame((double Low, double High) one, (double Low, double High) two) => IsSame(one.Low, two.Low) && IsSame(one.High, two.High);

    // Twice the share below which a change is none.
    private static bool IsSame(double one, double two) => one.Equals(two) || Math.Abs(one - two) <= 2e-7 * Math.Min(one, two);
}
