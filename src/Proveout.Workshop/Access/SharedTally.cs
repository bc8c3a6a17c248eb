using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Counts of tries in the database of the journal, one for all its servers.</summary>
/// <param name="counts">The counts that they share.</param>
public sealed class SharedTally(ISharedCounts counts) : IAttemptTally
{
    /// <inheritdoc/>
    public T Change<T>(IReadOnlyList<string> names, DateTimeOffset forget, Func<IReadOnlyDictionary<string, AttemptCount>, (IReadOnlyDictionary<string, AttemptCount> Changed, T Answer)> change)
    {
        try
        {
            return counts.Change(names, forget, there =>
            {
                var (changed, answer) = change(there.ToDictionary(one => one.Key, one => new AttemptCount(one.Value.Level, one.Value.At), StringComparer.Ordinal));
                return (changed.ToDictionary(one => one.Key, one => new SharedCount(one.Value.Level, one.Value.At), StringComparer.Ordinal), answer);
            });
        }
        catch (JournalException cause)
        {
            throw new AccessException($"Nobody is let in: tries are counted in the database. {cause.Message}", cause);
        }
    }
}
