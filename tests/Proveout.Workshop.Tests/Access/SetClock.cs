namespace Proveout.Workshop.Tests.Access;

/// <summary>A clock that goes when it is told to.</summary>
internal sealed class SetClock : TimeProvider
{
    private DateTimeOffset _now = new(2026, 11, 28, 8, 0, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => _now;

    public void Go(TimeSpan on) => _now += on;
}
