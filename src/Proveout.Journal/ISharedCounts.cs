namespace Proveout.Journal;

/// <summary>Counts that all servers of one database share and forget after a while; a database that was stopped at once may have forgotten all. They are no part of the record.</summary>
/// <remarks>Every member can throw <see cref="JournalUnavailableException"/>.</remarks>
public interface ISharedCounts
{
    /// <summary>Looks at counts and changes them while nobody else does.</summary>
    /// <param name="names">Which.</param>
    /// <param name="forget">What was last changed before this time is gone.</param>
    /// <param name="change">Gets those that there are, by name; gives those that are to stand from now on, and the answer. It is asked again when the connection broke before anything counted.</param>
    T Change<T>(IReadOnlyList<string> names, DateTimeOffset forget, Func<IReadOnlyDictionary<string, SharedCount>, (IReadOnlyDictionary<string, SharedCount> Changed, T Answer)> change);
}
