namespace Proveout.Workshop;

/// <summary>Counts of tries in the memory of this process: a bench with its journal in a file has no other. A restart forgets them.</summary>
public sealed class ProcessTally : IAttemptTally
{
    // Swept when there are so many, and not at each try.
    private const int Many = 10_000;

    private readonly Lock _turn = new();
    private readonly Dictionary<string, AttemptCount> _counts = new(StringComparer.Ordinal);

    /// <inheritdoc/>
    public T Change<T>(IReadOnlyList<string> names, DateTimeOffset forget, Func<IReadOnlyDictionary<string, AttemptCount>, (IReadOnlyDictionary<string, AttemptCount> Changed, T Answer)> change)
    {
        lock (_turn)
        {
            if (_counts.Count >= Many)
                foreach (var (name, count) in _counts)
                    if (count.At < forget)
                        _counts.Remove(name);
            var there = names.Where(name => _counts.TryGetValue(name, out var count) && count.At >= forget).ToDictionary(name => name, name => _counts[name], StringComparer.Ordinal);
            var (changed, answer) = change(there);
            foreach (var (name, count) in changed)
                _counts[name] = count;
            return answer;
        }
    }
}
