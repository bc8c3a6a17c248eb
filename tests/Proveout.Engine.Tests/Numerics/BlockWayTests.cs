using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

/// <summary>The way between two nodes through the blocks of a network, and what adds up along it.</summary>
public sealed class BlockWayTests
{
    [Fact]
    public void A_way_passes_no_block_twice() => ForAll((random, _, way) => way.Select(step => step.Block).Distinct().Count() == way.Count);

    [Fact]
    public void A_way_passes_a_block_between_two_of_its_nodes() => ForAll((random, bridges, way) =>
        way.All(step => step.First != step.Last && IsIn(bridges, step.Block, step.First) && IsIn(bridges, step.Block, step.Last)));

    // Every block is joined to the others by single nodes, so that each passes on all of the current.
    [Fact]
    public void Resistances_of_the_blocks_of_a_way_add_up_to_that_between_its_ends() => ForAll((random, _, way, ohms) =>
        Math.Abs(way.Sum(step => random.Network.Resistance(step.First, step.Last)) - ohms) <= 1e-12 * ohms);

    [Fact]
    public void Volts_of_a_current_through_a_block_are_those_of_the_whole_network() => ForAll((random, bridges, way) => way.All(step =>
    {
        var (volts, network) = (new BlockVolts(), random.Network);
        network.Blocks.Volts(step.Block, step.First, step.Last, volts);
        return Enumerable.Range(0, random.NodeCount).Where(node => IsIn(bridges, step.Block, node)).All(node =>
        {
            // By reciprocity and superposition, from three resistances.
            var expected = (network.Resistance(step.First, step.Last) + network.Resistance(step.Last, node) - network.Resistance(step.First, node)) / 2;
            var found = volts.Between(bridges.PlaceIn(step.Block, node), bridges.PlaceIn(step.Block, step.Last));
            return Math.Abs(found - expected) <= 1e-12 * (network.Resistance(step.Last, node) + network.Resistance(step.First, node));
        });
    }));

    private static bool IsIn(Bridges bridges, int block, int node) => bridges.BlockOf(node) == block || bridges.TopOf(block) == node;

    private static void ForAll(Func<RandomNetwork, Bridges, List<Step>, bool> holds) => ForAll((random, bridges, way, _) => holds(random, bridges, way));

    private static void ForAll(Func<RandomNetwork, Bridges, List<Step>, double, bool> holds) =>
        Check.One(Config.QuickThrowOnFailure.WithMaxTest(300), Prop.ForAll(RandomNetwork.Any, random =>
            (from a in Enumerable.Range(0, random.NodeCount)
             from b in Enumerable.Range(0, random.NodeCount)
             where a != b && random.Network.Islands.Of(a) == random.Network.Islands.Of(b)
             select holds(random, random.Network.Bridges, Way(random.Network.Bridges, a, b), random.Network.Resistance(a, b))).All(isHeld => isHeld)));

    private static List<Step> Way(Bridges bridges, int a, int b)
    {
        var (steps, way) = (new List<Step>(), new BlockWay(bridges, a, b));
        while (way.MoveNext())
            steps.Add(new Step(way.Current, way.First, way.Last));
        return steps;
    }

    private readonly record struct Step(int Block, int First, int Last);
}
