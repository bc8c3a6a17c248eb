namespace Proveout.Workshop.Tests.Access;

public sealed class ProcessTallyTests : AttemptLimitsContract
{
    private readonly ProcessTally _tally = new();

    [Fact]
    public void Of_very_many_counts_the_old_ones_are_let_go()
    {
        var now = new DateTimeOffset(2026, 11, 28, 8, 0, 0, TimeSpan.Zero);
        for (var number = 0; number < 10_000; number++)
            _tally.Change([], default, _ => (new Dictionary<string, AttemptCount> { [$"{number}"] = new(1, now) }, true));
        _tally.Change([], now.AddHours(1), _ => (new Dictionary<string, AttemptCount>(), true));
        Assert.False(_tally.Change(["7"], default, counts => (new Dictionary<string, AttemptCount>(), counts.ContainsKey("7"))));
    }

    protected override IAttemptTally Open() => _tally;

    protected override void Close()
    {
    }
}
