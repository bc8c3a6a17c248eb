using System.Diagnostics.CodeAnalysis;

namespace Proveout.Workshop;

/// <summary>
/// Things that are costly to make: each is made once, even when two ask for it at once, and of more than so many the one that was not asked for
/// longest is let go. So a server that is left to run for months does not grow by every revision and every build that somebody once looked at.
/// </summary>
/// <typeparam name="TKey">What they are asked for by.</typeparam>
/// <typeparam name="TValue">The things.</typeparam>
/// <param name="most">How many are kept, 1 or more.</param>
internal sealed class RecentlyUsed<TKey, TValue>(int most)
    where TKey : notnull
{
    private readonly Lock _gate = new();
    private readonly Dictionary<TKey, Kept> _kept = [];
    private long _turn;

    /// <summary>How many are kept now.</summary>
    public int Count
    {
        get
        {
            lock (_gate)
                return _kept.Count;
        }
    }

    /// <summary>The thing; made when it is not kept.</summary>
    public TValue GetOrMake(TKey key, Func<TValue> make)
    {
        Lazy<TValue> thing;
        lock (_gate)
        {
            thing = _kept.TryGetValue(key, out var known) ? known.Thing : new(make);
            Keep(key, thing);
        }

        // Outside the gate: making one thing holds up nobody who asks for another.
        return thing.Value;
    }

    /// <summary>The thing, when it is kept.</summary>
    public bool TryFind(TKey key, [MaybeNullWhen(false)] out TValue value)
    {
        Lazy<TValue>? thing = null;
        lock (_gate)
            if (_kept.TryGetValue(key, out var known))
                Keep(key, thing = known.Thing);
        value = thing is null ? default : thing.Value;
        return thing is not null;
    }

    /// <summary>Keeps a thing in the place of one that may be kept already.</summary>
    public void Set(TKey key, TValue value)
    {
        lock (_gate)
            Keep(key, new(value));
    }

    /// <summary>Lets go what is no longer wanted.</summary>
    public void Drop(Func<TValue, bool> isUnwanted)
    {
        lock (_gate)
            foreach (var (key, _) in _kept.Where(pair => pair.Value.Thing is { IsValueCreated: true } thing && isUnwanted(thing.Value)).ToArray())
                _kept.Remove(key);
    }

    private void Keep(TKey key, Lazy<TValue> thing)
    {
        _kept[key] = new(thing, ++_turn);
        if (_kept.Count > most)
            _kept.Remove(_kept.MinBy(pair => pair.Value.Turn).Key);
    }

    private readonly record struct Kept(Lazy<TValue> Thing, long Turn);
}
