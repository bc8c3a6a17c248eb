using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Faults;

/// <summary>Responses that are worked out once they are asked for.</summary>
public sealed class RememberedResponsesTests
{
    private const int Faults = 50;

    [Fact]
    public void Nothing_is_worked_out_before_it_is_asked_for() => Assert.Equal(0, new Counted().Worked);

    [Fact]
    public void What_was_asked_for_is_kept()
    {
        var responses = new Counted();

        Assert.Same(responses.Of(7), responses.Of(7));

        Assert.Equal(1, responses.Worked);
    }

    [Fact]
    public void Many_asked_for_at_once_come_in_the_order_asked()
    {
        var responses = new Counted();
        int[] asked = [.. Enumerable.Range(0, Faults).Reverse()];

        Assert.Equal(asked, responses.Of(asked).Select(response => response.Checks[0]));
    }

    [Fact]
    public void Threads_that_ask_for_the_same_at_the_same_time_get_the_same_one()
    {
        var responses = new Counted();

        var got = responses.Of([.. Enumerable.Repeat(3, 1000)]);

        Assert.All(got, response => Assert.Same(got[0], response));
    }

    // The response of a fault names the fault.
    private sealed class Counted() : RememberedResponses(Faults)
    {
        private int _worked;

        public int Worked => _worked;

        public override IEnumerable<int> Catching(int fault) => [];

        public override bool IsCatching(int fault, int check) => false;

        protected override FaultResponse Find(int fault)
        {
            Interlocked.Increment(ref _worked);
            return new([fault], [ReadingInterval.Anything]);
        }
    }
}
