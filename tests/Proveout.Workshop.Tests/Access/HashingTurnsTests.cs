namespace Proveout.Workshop.Tests.Access;

public sealed class HashingTurnsTests
{
    [Fact]
    public async Task Two_compute_at_once_twenty_wait_and_the_rest_is_sent_away()
    {
        using var turns = new HashingTurns();
        var taken = new[] { await turns.NextAsync(default), await turns.NextAsync(default) };
        var waiting = Enumerable.Range(0, 20).Select(_ => turns.NextAsync(default)).ToArray();
        Assert.All(waiting, turn => Assert.False(turn.IsCompleted));
        Assert.Null(await turns.NextAsync(default));
        taken[0]!.Dispose();
        Assert.NotNull(await await Task.WhenAny(waiting));
    }

    [Fact]
    public async Task Who_gives_up_waiting_leaves_the_place_to_another()
    {
        using var turns = new HashingTurns();
        using var gone = new CancellationTokenSource();
        var (first, second) = (await turns.NextAsync(default), await turns.NextAsync(default));
        var waiting = Enumerable.Range(0, 20).Select(_ => turns.NextAsync(gone.Token)).ToArray();
        await gone.CancelAsync();
        foreach (var turn in waiting)
            await Assert.ThrowsAnyAsync<OperationCanceledException>(() => turn);
        var next = turns.NextAsync(default);
        first!.Dispose();
        Assert.NotNull(await next);
        second!.Dispose();
    }
}
