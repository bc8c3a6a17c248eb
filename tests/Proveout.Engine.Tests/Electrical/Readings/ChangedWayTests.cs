using Proveout.Engine.Electrical;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Readings;

/// <summary>The best way of a diode test under a fault, searched from both leads, against ways lengthened step by step until none gets better.</summary>
public sealed class ChangedWayTests
{
    [Fact]
    public void The_best_way_under_every_tenth_fault_is_that_of_the_plain_search()
    {
        var wiring = WiringNetworkBuilder.Build(Repository.Design("pennywort"));
        var state = new StateNetwork(wiring, new MachineState(false, []));
        var paths = new PathVolts(wiring, state, MeterMode.DiodeTest);
        var way = new ChangedWay(paths);
        var random = new Random(20261128);
        var (closed, open) = (0, 0);
        foreach (var fault in WiringFaultRules.Generate(new WiringContext(wiring)).Where((_, index) => index % 10 == 0))
        {
            var red = NodeNear(fault, wiring, random);
            var plain = Plain(paths, red, fault.Changes);
            for (var black = 0; black < paths.NodeCount; black += 7)
            {
                if (black == red)
                    continue;
                var volts = way.Volts(red, black, fault.Changes);
                Assert.True(volts.Equals(plain[black]) || Math.Abs((volts / plain[black]) - 1) < 1e-12, $"{volts} for {plain[black]} under {fault.Fault.Id}");
                _ = double.IsFinite(volts) ? closed++ : open++;
            }
        }

        Assert.True(closed > 500 && open > 500, $"{closed} ways and {open} that are none: the trial says little.");
    }

    [Fact]
    public void Elements_of_the_best_way_in_the_machine_as_designed_lead_from_red_to_black_at_its_volts()
    {
        var wiring = WiringNetworkBuilder.Build(Repository.Design("pennywort"));
        var paths = new PathVolts(wiring, new StateNetwork(wiring, new MachineState(false, [])), MeterMode.DiodeTest);
        var found = 0;
        for (var red = 0; red < paths.NodeCount; red += 5)
        {
            var plain = Plain(paths, red, []);
            for (var black = 0; black < paths.NodeCount; black += 7)
            {
                if (black == red)
                    continue;
                var way = paths.Best(red, black);
                Assert.True(way.Volts.Equals(plain[black]) || Math.Abs((way.Volts / plain[black]) - 1) < 1e-12, $"{way.Volts} for {plain[black]}");
                if (double.IsFinite(way.Volts))
                    Assert.Equal(way.Volts, Along(paths, red, black, way.Elements), way.Volts * 1e-12);
                found += way.Elements.Length > 1 ? 1 : 0;
            }
        }

        Assert.True(found > 200, $"{found} ways of several elements: the trial says little.");
    }

    [Fact]
    public void A_way_is_found_below_a_limit_that_it_keeps_and_none_below_one_that_it_does_not()
    {
        var wiring = WiringNetworkBuilder.Build(Repository.Design("pennywort"));
        var paths = new PathVolts(wiring, new StateNetwork(wiring, new MachineState(false, [])), MeterMode.DiodeTest);
        var way = new ChangedWay(paths);
        var found = 0;
        for (var black = 1; black < paths.NodeCount; black++)
            if (way.Volts(0, black, []) is var volts && double.IsFinite(volts))
            {
                Assert.Equal(volts, way.Volts(0, black, [], below: volts * 1.001), volts * 1e-12);
                Assert.Equal(double.PositiveInfinity, way.Volts(0, black, [], below: volts * 0.999));
                found++;
            }

        Assert.True(found > 20, $"{found} ways: the trial says little.");
    }

    // Volts from red to black along some elements alone, each passed once.
    private static double Along(PathVolts paths, int red, int black, int[] elements)
    {
        var (volts, node, left) = (0.0, red, elements.ToHashSet());
        while (node != black)
        {
            var step = Assert.Single(paths.StepsAt(node, isBackward: false).ToArray(), candidate => left.Contains(candidate.Element));
            left.Remove(step.Element);
            (volts, node) = (volts + step.Volts, step.Other);
        }

        Assert.Empty(left);
        return volts;
    }

    private static int NodeNear(WiringFault fault, WiringNetwork wiring, Random random) =>
        fault.Changes.SelectMany(change => change.NodesIn(wiring)).OrderBy(_ => random.Next()).First();

    // Bellman, Quarterly of Applied Mathematics 16 (1958) 87-90.
    private static double[] Plain(PathVolts paths, int red, IReadOnlyList<ElementChange> changes)
    {
        double[] volts = [.. Enumerable.Repeat(double.PositiveInfinity, paths.NodeCount)];
        volts[red] = 0;
        for (var grew = true; grew;)
        {
            grew = false;
            for (var node = 0; node < volts.Length; node++)
            {
                foreach (var (element, other, own) in paths.StepsAt(node, isBackward: false))
                    grew |= Lower(other, volts[node] + paths.VoltsOf(element, own, changes));
                foreach (var join in changes.OfType<Join>().Where(join => join.A == node || join.B == node))
                    grew |= Lower(join.A == node ? join.B : join.A, volts[node] + paths.VoltsOf(join));
            }
        }

        return volts;

        bool Lower(int node, double onward)
        {
            if (onward >= paths.OpenVolts || onward >= volts[node])
                return false;
            volts[node] = onward;
            return true;
        }
    }
}
