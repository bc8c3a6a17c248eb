using System.Text;

namespace Proveout.Fuzz.Tests;

/// <summary>A mutator that changes nothing would find nothing.</summary>
public sealed class MutatorTests
{
    private static readonly byte[] Table = Encoding.UTF8.GetBytes("time,x\n0.1,12\n0.2,-3\n# end, of it\n");
    private static readonly byte[] Other = Encoding.UTF8.GetBytes("format: one\nparts:\n  A1: {type: two}\n");

    [Fact]
    public void Every_kind_of_change_changes_bytes()
    {
        var mutator = New(seed: 1);

        for (var kind = 0; kind < mutator.Kinds; kind++)
        {
            var changed = Enumerable.Range(0, 200).Count(_ => !mutator.Change(Table, Other, kind).AsSpan().SequenceEqual(Table));
            Assert.True(changed > 0, $"Change {kind} changed {changed} of 200.");
        }
    }

    [Fact]
    public void No_kind_of_change_touches_the_input_itself()
    {
        var mutator = New(seed: 2);
        byte[] input = [.. Table];

        for (var number = 0; number < 2000; number++)
            mutator.Change(input, Other, number % mutator.Kinds);

        Assert.Equal(Table, input);
    }

    [Fact]
    public void Every_kind_of_change_bears_an_input_of_nothing()
    {
        var mutator = New(seed: 3);

        for (var number = 0; number < 2000; number++)
            Assert.NotNull(mutator.Change([], number % 2 == 0 ? [] : Other, number % mutator.Kinds));
    }

    [Fact]
    public void The_same_seed_makes_the_same_inputs_and_another_makes_others()
    {
        Assert.Equal(Some(seed: 4), Some(seed: 4));
        Assert.NotEqual(Some(seed: 4), Some(seed: 5));

        static string Some(int seed)
        {
            var mutator = New(seed);
            return string.Join(' ', Enumerable.Range(0, 50).Select(_ => Convert.ToHexString(mutator.Change(Table, Other))));
        }
    }

    [Fact]
    public void No_input_grows_beyond_the_limit()
    {
        var mutator = New(seed: 6);

        for (var number = 0; number < 3000; number++)
            Assert.InRange(mutator.Change(Table, Other).Length, 0, 4096);
    }

    private static Mutator New(int seed) => new(new Random(seed), [Encoding.UTF8.GetBytes("token")], 4096);
}
