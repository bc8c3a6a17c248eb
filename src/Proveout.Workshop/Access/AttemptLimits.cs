using System.Security.Cryptography;
using System.Text;

namespace Proveout.Workshop;

/// <summary>Slows down who tries names, passwords and codes.</summary>
/// <remarks>
/// Each address and each name has a number of tries that comes back slowly; on top of that, every failure in a row from one address on one name doubles the wait. The wait hangs on both,
/// so that a neighbour who types wrong passwords does not lock a person out who calls from elsewhere.
/// </remarks>
/// <param name="tally">Where tries are counted.</param>
/// <param name="clock">The clock of the waits.</param>
public sealed class AttemptLimits(IAttemptTally tally, TimeProvider clock) : IAttemptLimits, IDisposable
{
    /// <summary>Tries at once from one address; one more every six seconds.</summary>
    public const int TriesOfAddress = 10;

    /// <summary>Tries at once on one name, from wherever; one more every six seconds.</summary>
    public const int TriesOfName = 20;

    private const int FreeFailures = 3;

    // Of a sum of times as binary fractions.
    private const double Rounding = 1e-6;

    private static readonly TimeSpan Refill = TimeSpan.FromSeconds(6);
    private static readonly TimeSpan LongestWait = TimeSpan.FromMinutes(5);
    private static readonly TimeSpan Forgotten = TimeSpan.FromHours(1);
    private static readonly Dictionary<string, AttemptCount> Nothing = [];

    private readonly KnownWaits _waits = new();
    private readonly HashingTurns _turns = new();

    /// <inheritdoc/>
    public TimeSpan? WaitFor(string address, string name)
    {
        var (now, keys) = (clock.GetUtcNow(), new Keys(address, name));
        if (_waits.At(now, keys.All) is { } known)
            return known;
        var (key, wait) = tally.Change(keys.All, now - Forgotten, counts => Try(counts, keys, now));
        if (key is null)
            return null;
        _waits.Note(key, now, wait);
        return wait;
    }

    /// <inheritdoc/>
    public Task<IDisposable?> TurnAsync(CancellationToken cancellation) => _turns.NextAsync(cancellation);

    /// <inheritdoc/>
    public void Failed(string address, string name)
    {
        var (now, keys) = (clock.GetUtcNow(), new Keys(address, name));
        tally.Change([keys.Pair], now - Forgotten, counts => (One(keys.Pair, new AttemptCount(counts.GetValueOrDefault(keys.Pair).Level + 1, now)), true));
        _waits.Forget(keys.Pair);
    }

    /// <inheritdoc/>
    public void Succeeded(string address, string name)
    {
        var (now, keys) = (clock.GetUtcNow(), new Keys(address, name));
        tally.Change([keys.Pair], now - Forgotten, counts => (counts.GetValueOrDefault(keys.Pair).Level > 0 ? One(keys.Pair, new AttemptCount(0, now)) : Nothing, true));
        _waits.Forget(keys.Pair);
    }

    /// <inheritdoc/>
    public void Dispose() => _turns.Dispose();

    // The key that has to wait, or none, and how long. A try that has to wait is none, and takes nothing.
    private static (IReadOnlyDictionary<string, AttemptCount> Changed, (string? Key, TimeSpan Wait) Answer) Try(IReadOnlyDictionary<string, AttemptCount> counts, Keys keys, DateTimeOffset now)
    {
        if (counts.TryGetValue(keys.Pair, out var failed) && WaitAfter(failed.Level) - (now - failed.At) is { Ticks: > 0 } wait)
            return (Nothing, (keys.Pair, wait));
        var (ofAddress, ofName) = (After(counts, keys.Address, now), After(counts, keys.Name, now));
        return Excess(ofAddress, TriesOfAddress) is { } late ? (Nothing, (keys.Address, late))
            : Excess(ofName, TriesOfName) is { } later ? (Nothing, (keys.Name, later))
            : (new Dictionary<string, AttemptCount> { [keys.Address] = ofAddress, [keys.Name] = ofName }, (null, TimeSpan.Zero));
    }

    // The count after one more try, less those that came back meanwhile. A clock of another server may be a little ahead.
    private static AttemptCount After(IReadOnlyDictionary<string, AttemptCount> counts, string key, DateTimeOffset now)
    {
        var before = counts.GetValueOrDefault(key, new AttemptCount(0, now));
        var at = now > before.At ? now : before.At;
        return new AttemptCount(Math.Max(0, before.Level - ((at - before.At) / Refill)) + 1, at);
    }

    private static TimeSpan? Excess(AttemptCount count, int most) => count.Level > most + Rounding ? (count.Level - most) * Refill : null;

    private static TimeSpan WaitAfter(double failures) =>
        failures < FreeFailures ? TimeSpan.Zero : TimeSpan.FromSeconds(Math.Min(LongestWait.TotalSeconds, Math.Pow(2, failures - FreeFailures + 1)));

    private static Dictionary<string, AttemptCount> One(string key, AttemptCount count) => new() { [key] = count };

    /// <summary>What tries are counted by.</summary>
    private sealed record Keys(string Address, string Name, string Pair)
    {
        public Keys(string address, string name)
            : this($"address {address}", $"name {Short(name)}", $"failures {address} {Short(name)}")
        {
        }

        public IReadOnlyList<string> All { get; } = [Address, Name, Pair];

        // People type passwords where a name belongs, and the counts can lie in a database: two bytes of a hash tell names apart well enough, and tell nobody what was typed.
        private static string Short(string name) =>
            Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Concat(name.Trim().Take(PersonName.Longest)).ToUpperInvariant())).AsSpan(0, 2));
    }
}
