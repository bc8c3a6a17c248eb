using Proveout.Journal.Postgres;

namespace Proveout.Journal;

/// <summary>Where a journal is: the path of a file, or the address of a database.</summary>
public static class JournalPlace
{
    /// <summary>Whether it is the address of a database (<c>postgresql://…</c>) and not the path of a file.</summary>
    public static bool IsDatabase(string place) => PostgresAddress.IsOne(place);

    /// <summary>The place as it may be shown and logged: of an address only server and database.</summary>
    /// <exception cref="JournalUnavailableException">The address is not one, or carries a password.</exception>
    public static string NameOf(string place) => IsDatabase(place) ? PostgresAddress.NameOf(PostgresAddress.Read(place)) : place;

    /// <summary>Whether a journal is there; none is made.</summary>
    /// <exception cref="JournalException">That cannot be told.</exception>
    public static Task<bool> HasJournalAsync(string place, CancellationToken cancellation = default) =>
        IsDatabase(place) ? PostgresJournal.ExistsAsync(place, cancellation) : Task.FromResult(File.Exists(place));

    /// <summary>Keys that the servers of a journal share; null for one in a file.</summary>
    public static ISharedKeys? KeysOf(IJournal journal) => (journal as PostgresJournal)?.Keys;

    /// <summary>The page of who may come in, and the counts of who tried, that the servers of a journal share; null for one in a file.</summary>
    public static (ISharedPage Page, ISharedCounts Tries)? AccessOf(IJournal journal) => journal is PostgresJournal shared ? (shared.Access, shared.Tries) : null;

    /// <summary>Opens the journal, and makes it where there is none.</summary>
    /// <exception cref="JournalException">It cannot be opened.</exception>
    public static async Task<IJournal> OpenAsync(string place, TimeProvider clock, CancellationToken cancellation = default) => IsDatabase(place)
        ? await PostgresJournal.OpenAsync(place, clock, cancellation: cancellation).ConfigureAwait(false)
        : await SqliteJournal.OpenAsync(place, clock, cancellation: cancellation).ConfigureAwait(false);
}
