using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Numerics;
using Proveout.Engine.Tests.Electrical;

namespace Proveout.Engine.Tests.Numerics;

/// <summary>Laws that hold for every network of resistors, tried on random ones over ten decades.</summary>
public sealed class NetworkLawTests
{
    private const double Tolerance = 1e-9;

    [Fact]
    public void A_reading_is_the_same_with_the_leads_exchanged() => ForAll(random =>
    {
        // Reciprocity; Maxwell, A Treatise on Electricity and Magnetism (1873), 280-281.
        var network = random.Network;
        return Readings.All(Readings.Of(network), Transposed(Readings.Of(network)), (one, two) => Readings.AreSame(one, two, Tolerance));
    });

    [Fact]
    public void Adding_a_resistor_never_raises_a_reading() => ForAll(random =>
    {
        // Rayleigh's monotonicity law; Doyle and Snell, Random Walks and Electric Networks, 1.4.
        var added = random.Edges[0] with { A = random.Edges[^1].A, B = random.Edges[0].B == random.Edges[^1].A ? random.Edges[0].A : random.Edges[0].B };
        return Readings.All(
            Readings.Of(random.Network),
            Readings.Of(random.Network, [EdgeChange.Add(added.A, added.B, added.Conductance)]),
            (before, after) => after <= before * (1 + Tolerance));
    });

    [Fact]
    public void Lowering_a_resistor_never_raises_a_reading() => ForAll(random => Readings.All(
        Readings.Of(random.Network),
        Readings.Of(random.Network, [EdgeChange.Set(0, random.Edges[0], random.Edges[0].Conductance * 7)]),
        (before, after) => after <= before * (1 + Tolerance)));

    [Fact]
    public void Taking_a_resistor_away_never_lowers_a_reading() => ForAll(random => Readings.All(
        Readings.Of(random.Network),
        Readings.Of(random.Network, [EdgeChange.TakeAway(0, random.Edges[0])]),
        (before, after) => after >= before * (1 - Tolerance)));

    [Fact]
    public void A_changed_network_reads_as_one_built_anew() => ForAll(random => Readings.All(
        Readings.Of(new ResistorNetwork(random.NodeCount, random.EdgesAfter)),
        Readings.Of(random.Network, random.Changes),
        (anew, changed) => Readings.AreSame(anew, changed, Tolerance)));

    [Fact]
    public void A_changed_network_reads_as_loop_currents_say() => ForAll(random =>
    {
        var loops = new LoopAnalysis(random.NodeCount, [.. random.EdgesAfter.Select(edge => new Resistor(edge.A, edge.B, 1 / edge.Conductance))]);
        var expected = new double[random.NodeCount, random.NodeCount];
        for (var a = 0; a < random.NodeCount; a++)
            for (var b = 0; b < random.NodeCount; b++)
                expected[a, b] = loops.Reading(a, b);
        return Readings.All(expected, Readings.Of(random.Network, random.Changes), (loop, changed) => Readings.AreSame(loop, changed, Tolerance));
    });

    [Fact]
    public void A_change_and_its_undoing_leave_the_readings_as_they_were() => ForAll(random =>
    {
        var after = random.EdgesAfter;
        var kept = random.Edges.Where((_, index) => !random.Taken.Contains(index)).ToArray();
        List<EdgeChange> undo =
        [
            .. random.Taken.Select(index => EdgeChange.Add(random.Edges[index].A, random.Edges[index].B, random.Edges[index].Conductance)),
            .. random.Added.Select((edge, index) => EdgeChange.TakeAway(kept.Length + index, edge)),
            .. kept.Index().Where(item => item.Item.Conductance != after[item.Index].Conductance)
                .Select(item => EdgeChange.Set(item.Index, after[item.Index], item.Item.Conductance)),
        ];
        return undo.Count == 0 || Readings.All(
            Readings.Of(random.Network),
            Readings.Of(new ResistorNetwork(random.NodeCount, after), undo),
            (before, undone) => Readings.AreSame(before, undone, Tolerance));
    });

    [Fact]
    public void Changes_applied_one_after_the_other_leave_no_trace_of_each_other() => ForAll(random =>
    {
        var network = random.Network;
        var pairs = (from a in Enumerable.Range(0, random.NodeCount) from b in Enumerable.Range(0, random.NodeCount) select (a, b)).ToArray();
        var reused = new ChangedPorts(new Ports(network, pairs));
        reused.Apply([EdgeChange.TakeAway(0, random.Edges[0]), EdgeChange.Add(0, random.NodeCount - 1, 1000)]);
        reused.Apply(random.Changes);
        var fresh = new ChangedPorts(new Ports(network, pairs));
        fresh.Apply(random.Changes);
        return Enumerable.Range(0, pairs.Length).All(port => reused.Alters(port, out var one) == fresh.Alters(port, out var two) && one.Equals(two));
    });

    private static void ForAll(Func<RandomNetwork, bool> holds) =>
        Check.One(Config.QuickThrowOnFailure.WithMaxTest(300), Prop.ForAll(RandomNetwork.Any, holds));

    private static double[,] Transposed(double[,] readings)
    {
        var transposed = new double[readings.GetLength(1), readings.GetLength(0)];
        for (var a = 0; a < readings.GetLength(0); a++)
            for (var b = 0; b < readings.GetLength(1); b++)
                transposed[b, a] = readings[a, b];
        return transposed;
    }
}
