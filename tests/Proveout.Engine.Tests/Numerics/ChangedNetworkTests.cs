using MathNet.Numerics.LinearAlgebra;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

public sealed class ChangedNetworkTests
{
    [Fact]
    public void A_balanced_Wheatstone_bridge_reads_as_if_the_detector_were_not_there()
    {
        // Wheatstone, Philosophical Transactions 133 (1843) 303-327; any circuits textbook. 100/200 against 300/600 ohm.
        var network = new ResistorNetwork(4, [Ohms(0, 1, 100), Ohms(1, 3, 200), Ohms(0, 2, 300), Ohms(2, 3, 600), Ohms(1, 2, 42)]);
        Assert.Equal(300.0 * 900 / 1200, network.Resistance(0, 3), 12);
    }

    [Fact]
    public void An_unbalanced_bridge_reads_as_the_star_delta_transformation_says()
    {
        // Kennelly, Electrical World 34 (1899) 413: the delta 10, 20, 30 becomes the star 10/3, 5, 10.
        var network = new ResistorNetwork(4, [Ohms(0, 1, 10), Ohms(0, 2, 20), Ohms(1, 2, 30), Ohms(1, 3, 40), Ohms(2, 3, 50)]);
        var upper = (10.0 * 30 / 60) + 40;
        var lower = (20.0 * 30 / 60) + 50;
        Assert.Equal((10.0 * 20 / 60) + (upper * lower / (upper + lower)), network.Resistance(0, 3), 12);
    }

    [Fact]
    public void An_endless_ladder_of_one_ohm_steps_tends_to_the_golden_ratio()
    {
        // Feynman Lectures on Physics II, 22-6: the ladder's characteristic resistance; here r = 1, so (1 + sqrt 5) / 2.
        var edges = new List<Edge>();
        for (var step = 0; step < 40; step++)
        {
            edges.Add(Ohms(step, step + 1, 1));
            edges.Add(Ohms(step + 1, 41, 1));
        }

        Assert.Equal((1 + Math.Sqrt(5)) / 2, new ResistorNetwork(42, [.. edges]).Resistance(0, 41), 12);
    }

    [Fact]
    public void Opening_the_only_path_reads_over_range()
    {
        var network = new ResistorNetwork(3, [Ohms(0, 1, 0.005), Ohms(1, 2, 5)]);
        var changed = Changed(network, EdgeChange.TakeAway(0, network.EdgeOf(0)));
        Assert.Equal(double.PositiveInfinity, changed(0, 2));
        Assert.Equal(5, changed(1, 2), 12);
    }

    [Fact]
    public void Opening_a_milliohm_joint_beside_fifty_megohms_leaves_fifty_megohms()
    {
        var network = new ResistorNetwork(3, [Ohms(0, 1, 0.005), Ohms(1, 2, 50e6), Ohms(2, 0, 100)]);
        var changed = Changed(network, EdgeChange.TakeAway(0, network.EdgeOf(0)));
        Assert.Equal(1, changed(0, 1) / 50e6 / (1 + (100 / 50e6)), 12);
    }

    [Fact]
    public void Bridging_fifty_megohms_with_a_milliohm_leaves_a_milliohm()
    {
        var network = new ResistorNetwork(4, [Ohms(0, 1, 50e6), Ohms(1, 2, 0.005), Ohms(2, 3, 7e6)]);
        var changed = Changed(network, EdgeChange.Add(0, 1, 1000));
        Assert.Equal(1, changed(0, 1) / 0.001 * (1 + (0.001 / 50e6)), 1e-12);
    }

    [Fact]
    public void Conductors_exchanged_in_a_tree_read_the_sum_of_what_lies_on_the_new_way_to_the_last_digit()
    {
        // 0 - 1 - 2 and 0 - 3 - 4, the ends at 2 and 4 exchanged: nothing is subtracted, so nothing is lost beside ten megohms.
        var network = new ResistorNetwork(5, [Ohms(0, 1, 10e6), Ohms(1, 2, 0.005), Ohms(0, 3, 0.25), Ohms(3, 4, 0.125)]);
        var changed = Changed(
            network, EdgeChange.TakeAway(1, network.EdgeOf(1)), EdgeChange.TakeAway(3, network.EdgeOf(3)), EdgeChange.Add(1, 4, 4), EdgeChange.Add(3, 2, 8));
        Assert.Equal(0.25 + 0.125, changed(0, 2));
        Assert.Equal(10e6 + 0.25, changed(0, 4));
        Assert.Equal(10e6 + 0.25 + 0.25 + 0.125, changed(4, 2));
    }

    [Fact]
    public void A_change_of_bridges_alone_leaves_nothing_to_invert()
    {
        var network = new ResistorNetwork(5, [Ohms(0, 1, 1), Ohms(1, 2, 1), Ohms(0, 3, 1), Ohms(3, 4, 1)]);
        var pieces = new ChangedPieces(network);

        pieces.Find([EdgeChange.TakeAway(1, network.EdgeOf(1)), EdgeChange.Add(4, 2, 1), EdgeChange.Set(2, network.EdgeOf(2), 5)]);

        Assert.Equal(0, pieces.Updates.Length);
        Assert.Equal(2, pieces.Joints.Length);
        Assert.Equal(1, pieces.Count);
    }

    [Fact]
    public void Two_resistors_taken_out_of_one_loop_leave_two_parts_that_read_over_range()
    {
        // A square 0 - 1 - 2 - 3 of 1, 2, 3 and 4 ohms; the sides 0 - 1 and 2 - 3 go.
        var network = new ResistorNetwork(4, [Ohms(0, 1, 1), Ohms(1, 2, 2), Ohms(2, 3, 3), Ohms(3, 0, 4)]);
        var changed = Changed(network, EdgeChange.TakeAway(0, network.EdgeOf(0)), EdgeChange.TakeAway(2, network.EdgeOf(2)));
        Assert.Equal(2, changed(1, 2), 12);
        Assert.Equal(4, changed(0, 3), 12);
        Assert.Equal(double.PositiveInfinity, changed(0, 2));
    }

    [Fact]
    public void Every_reading_after_random_changes_is_that_of_a_network_built_anew()
    {
        var random = new Random(20261125);
        for (var round = 0; round < 200; round++)
            CompareWithNetworkBuiltAnew(random);
    }

    private static void CompareWithNetworkBuiltAnew(Random random)
    {
        const int nodes = 14;
        var edges = Enumerable.Range(0, 16).Select(_ => RandomEdge(random, nodes)).ToArray();
        var network = new ResistorNetwork(nodes, edges);
        var taken = Enumerable.Range(0, edges.Length).OrderBy(_ => random.Next()).Take(random.Next(0, 4)).ToArray();
        var added = Enumerable.Range(0, random.Next(taken.Length == 0 ? 1 : 0, 4)).Select(_ => RandomEdge(random, nodes)).ToArray();
        var changed = Changed(
            network,
            [.. taken.Select(index => EdgeChange.TakeAway(index, edges[index])), .. added.Select(edge => EdgeChange.Add(edge.A, edge.B, edge.Conductance))]);
        var anew = edges.Where((_, index) => !taken.Contains(index)).Concat(added).ToArray();
        for (var a = 0; a < nodes; a++)
            for (var b = a + 1; b < nodes; b++)
                Agrees(PseudoInverseReading(nodes, anew, a, b), changed(a, b));
    }

    private static Func<int, int, double> Changed(ResistorNetwork network, params List<EdgeChange> changes)
    {
        var pairs = (from a in Enumerable.Range(0, network.NodeCount) from b in Enumerable.Range(0, network.NodeCount) select (a, b)).ToArray();
        var changed = new ChangedPorts(new Ports(network, pairs));
        changed.Apply(changes);
        return (a, b) => changed.Alters((a * network.NodeCount) + b, out var ohms) ? ohms : network.Resistance(a, b);
    }

    private static void Agrees(double expected, double actual)
    {
        if (double.IsPositiveInfinity(expected))
            Assert.Equal(expected, actual);
        else
            Assert.InRange(actual / expected, 1 - 1e-6, 1 + 1e-6);
    }

    // Effective resistance from the Moore-Penrose inverse of the Laplacian: Klein and Randic, Journal of Mathematical Chemistry 12 (1993) 81-95.
    private static double PseudoInverseReading(int nodes, Edge[] edges, int a, int b)
    {
        var laplacian = Matrix<double>.Build.Dense(nodes, nodes);
        foreach (var edge in edges)
        {
            laplacian[edge.A, edge.A] += edge.Conductance;
            laplacian[edge.B, edge.B] += edge.Conductance;
            laplacian[edge.A, edge.B] -= edge.Conductance;
            laplacian[edge.B, edge.A] -= edge.Conductance;
        }

        var port = Vector<double>.Build.Dense(nodes);
        (port[a], port[b]) = (1, -1);
        var potential = laplacian.PseudoInverse() * port;
        return (laplacian * potential - port).L2Norm() > 1e-6 ? double.PositiveInfinity : potential[a] - potential[b];
    }

    private static Edge RandomEdge(Random random, int nodes)
    {
        var a = random.Next(nodes);
        var b = (a + 1 + random.Next(nodes - 1)) % nodes;
        return Ohms(a, b, Math.Pow(10, random.NextDouble() * 4));
    }

    private static Edge Ohms(int a, int b, double ohms) => new(a, b, 1 / ohms);
}
