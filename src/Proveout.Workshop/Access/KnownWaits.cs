namespace Proveout.Workshop;

/// <summary>Waits that were told a moment ago: who asks again before their end is told without counting anew, so that a flood of tries does not reach the database.</summary>
internal sealed class KnownWaits
{
    private const int Many = 1000;

    // Another server may have let the person in meanwhile.
    private static readonly TimeSpan Known = TimeSpan.FromSeconds(5);

    private readonly Lock _turn = new();
    private readonly Dictionary<string, (DateTimeOffset Told, DateTimeOffset Until)> _waits = new(StringComparer.Ordinal);

    /// <summary>The wait that still holds for one of the keys; null when none is known.</summary>
    public TimeSpan? At(DateTimeOffset now, IReadOnlyList<string> keys)
    {
        lock (_turn)
            foreach (var key in keys)
                if (_waits.TryGetValue(key, out var wait) && wait.Until > now && now - wait.Told < Known)
                    return wait.Until - now;
        return null;
    }

    public void Note(string key, DateTimeOffset now, TimeSpan wait)
    {
        lock (_turn)
        {
            if (_waits.Count >= Many)
                foreach (var (other, told) in _waits)
                    if (told.Until <= now || now - told.Told >= Known)
                        _waits.Remove(other);
            _waits[key] = (now, now + wait);
        }
    }

    public void Forget(string key)
    {
        lock (_turn)
            _waits.Remove(key);
    }
}
