using System.Collections.Concurrent;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Faults;

public sealed class RememberedInteractionsTests
{
    [Fact]
    public void The_same_question_of_two_faults_is_simulated_once()
    {
        var counted = new Counted();
        var remembered = new RememberedInteractions(counted);
        Assert.True(remembered.IsSurelyCaught([1, 2], 4));
        Assert.True(remembered.IsSurelyCaught([1, 2], 4));
        Assert.Equal([4], remembered.ShowsTogether([1, 2]).CatchingChecks);
        Assert.Equal([4], remembered.ShowsTogether([1, 2]).CatchingChecks);
        Assert.Equal(["1,2 at 4", "1,2 at all"], counted.Asked);
    }

    [Fact]
    public void Another_thread_knows_what_the_first_has_asked()
    {
        var counted = new Counted();
        var remembered = new RememberedInteractions(counted);
        Assert.True(remembered.IsSurelyCaught([1, 2], 4));
        Assert.True(remembered.ForAnotherThread().IsSurelyCaught([1, 2], 4));
        Assert.Single(counted.Asked);
    }

    [Fact]
    public void Other_faults_and_other_checks_are_other_questions()
    {
        var remembered = new RememberedInteractions(new Counted());
        Assert.True(remembered.IsSurelyCaught([1, 2], 4));
        Assert.False(remembered.IsSurelyCaught([1, 2], 5));
        Assert.False(remembered.IsSurelyCaught([1, 3], 4));
    }

    // Check 4 catches faults 1 and 2 together, and nothing else catches anything.
    private sealed class Counted : IFaultInteractions
    {
        public ConcurrentQueue<string> Asked { get; private init; } = [];

        public ReadingInterval? Shown(ReadOnlySpan<int> faults, int check) => throw new NotSupportedException();

        public IReadOnlyList<int> Contradicting(int fault) => [];

        public bool IsSurelyCaught(ReadOnlySpan<int> faults, int check)
        {
            Asked.Enqueue($"{string.Join(',', faults.ToArray())} at {check}");
            return check == 4 && faults.SequenceEqual([1, 2]);
        }

        public int[]? Overturning(ReadOnlySpan<int> faults, int check, bool isCaught, bool thoroughly) => null;

        public TogetherShows ShowsTogether(ReadOnlySpan<int> faults)
        {
            Asked.Enqueue($"{string.Join(',', faults.ToArray())} at all");
            return new([4], false);
        }

        public IFaultInteractions ForAnotherThread() => new Counted { Asked = Asked };
    }
}
