using System.Collections.Concurrent;
using System.Threading.RateLimiting;
using Proveout.Workshop;

namespace Proveout.Web.Access;

/// <summary>Slows down who tries names, passwords and codes.</summary>
/// <remarks>
/// Each address and each name has a bucket of tries that fills slowly; on top of that, every failure in a row from one address on one name doubles the wait. The wait hangs on both,
/// so that a neighbour who types wrong passwords does not lock a person out who calls from elsewhere.
/// </remarks>
/// <param name="clock">The clock of the waits.</param>
internal sealed class AttemptLimits(TimeProvider clock) : IAttemptLimits, IDisposable
{
    /// <summary>Tries at once from one address; one more every six seconds.</summary>
    public const int TriesOfAddress = 10;

    /// <summary>Tries at once on one name, from wherever; one more every six seconds.</summary>
    public const int TriesOfName = 20;

    private const int FreeFailures = 3;
    private const int MostFailures = 10_000;
    private static readonly TimeSpan Refill = TimeSpan.FromSeconds(6);
    private static readonly TimeSpan LongestWait = TimeSpan.FromMinutes(5);
    private static readonly TimeSpan Forgotten = TimeSpan.FromHours(1);

    private readonly PartitionedRateLimiter<string> _addresses = Buckets(TriesOfAddress);
    private readonly PartitionedRateLimiter<string> _names = Buckets(TriesOfName);
    private readonly ConcurrentDictionary<(string Address, string Name), (int Count, DateTimeOffset Last)> _failures = new();

    // A hash takes a core for a moment; more than two at a time would take the bench from those who work at it.
    private readonly ConcurrencyLimiter _hashing = new(new ConcurrencyLimiterOptions { PermitLimit = 2, QueueLimit = 20, QueueProcessingOrder = QueueProcessingOrder.OldestFirst });

    /// <inheritdoc/>
    public TimeSpan? WaitFor(string address, string name)
    {
        if (_failures.TryGetValue((address, Key(name)), out var failed) && WaitAfter(failed.Count) - (clock.GetUtcNow() - failed.Last) is { Ticks: > 0 } wait)
            return wait;
        using var ofAddress = _addresses.AttemptAcquire(address);
        if (!ofAddress.IsAcquired)
            return Refill;
        using var ofName = _names.AttemptAcquire(Key(name));
        return ofName.IsAcquired ? null : Refill;
    }

    /// <inheritdoc/>
    public async Task<IDisposable?> TurnAsync(CancellationToken cancellation) => await _hashing.AcquireAsync(1, cancellation) is { IsAcquired: true } lease ? lease : null;

    /// <inheritdoc/>
    public void Failed(string address, string name)
    {
        var now = clock.GetUtcNow();
        if (_failures.Count >= MostFailures)
            foreach (var (key, failed) in _failures)
                if (now - failed.Last > LongestWait)
                    _failures.TryRemove(key, out _);
        _failures.AddOrUpdate((address, Key(name)), (1, now), (_, before) => now - before.Last > Forgotten ? (1, now) : (before.Count + 1, now));
    }

    /// <inheritdoc/>
    public void Succeeded(string address, string name) => _failures.TryRemove((address, Key(name)), out _);

    /// <inheritdoc/>
    public void Dispose()
    {
        _addresses.Dispose();
        _names.Dispose();
        _hashing.Dispose();
    }

    private static TimeSpan WaitAfter(int failures) =>
        failures < FreeFailures ? TimeSpan.Zero : TimeSpan.FromSeconds(Math.Min(LongestWait.TotalSeconds, Math.Pow(2, failures - FreeFailures + 1)));

    private static string Key(string name) => string.Concat(name.Trim().Take(PersonName.Longest)).ToUpperInvariant();

    private static PartitionedRateLimiter<string> Buckets(int tries) => PartitionedRateLimiter.Create<string, string>(key => RateLimitPartition.GetTokenBucketLimiter(key, _ => new TokenBucketRateLimiterOptions
    {
        TokenLimit = tries,
        TokensPerPeriod = 1,
        ReplenishmentPeriod = Refill,
        QueueLimit = 0,
    }));
}
