using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

/// <summary>Whether resistors taken out of loops part a network, by labels and by walking it.</summary>
public sealed class LoopCutsTests
{
    // A square 0 - 1 - 2 - 3, and a triangle 3 - 4 - 5 at one of its corners.
    private static readonly Edge[] SquareAndTriangle = [new(0, 1, 1), new(1, 2, 1), new(2, 3, 1), new(3, 0, 1), new(3, 4, 1), new(4, 5, 1), new(5, 3, 1)];

    [Theory]
    [InlineData(false, 0)]
    [InlineData(true, 0, 2)]
    [InlineData(true, 0, 1)]
    [InlineData(false, 0, 4)]
    [InlineData(true, 0, 4, 6)]
    public void Two_sides_of_one_loop_part_it_and_one_side_of_each_of_two_loops_parts_nothing(bool parts, params int[] taken) =>
        Assert.Equal(parts, new LoopCuts(new ResistorNetwork(6, SquareAndTriangle)).Find([.. taken.Select(edge => EdgeChange.TakeAway(edge, SquareAndTriangle[edge]))]));

    [Fact]
    public void Resistors_of_loops_part_a_network_just_when_their_labels_say_so() =>
        Check.One(Config.QuickThrowOnFailure.WithMaxTest(500), Prop.ForAll(RandomNetwork.Any, random =>
        {
            var network = random.Network;
            int[] taken = [.. random.Taken.Where(edge => network.Bridges.Below(edge) < 0)];
            var left = new ResistorNetwork(random.NodeCount, [.. random.Edges.Where((_, index) => !taken.Contains(index))]);
            return new LoopCuts(network).Find([.. taken.Select(edge => EdgeChange.TakeAway(edge, random.Edges[edge]))]) == (left.Islands.Count > network.Islands.Count);
        }));
}
