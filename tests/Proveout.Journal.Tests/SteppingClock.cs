namespace Proveout.Journal.Tests;

/// <summary>A clock of which each look is a second later than the one before; its timers are real.</summary>
internal sealed class SteppingClock : TimeProvider
{
    public static readonly DateTimeOffset Start = new(2031, 3, 14, 9, 26, 53, TimeSpan.Zero);
    private long _looks;

    public override DateTimeOffset GetUtcNow() => Start.AddSeconds(Interlocked.Increment(ref _looks) - 1);
}
