using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>What a bench keeps of who may come in and of who tries: with a journal in a database in that database, for all its servers; with one in a file in a file beside it and in memory.</summary>
/// <param name="Store">Who may come in.</param>
/// <param name="Tally">Who tries.</param>
public sealed record AccessKeeping(IAccessStore Store, IAttemptTally Tally)
{
    /// <summary>That of a journal in a file.</summary>
    /// <param name="file">Path of the journal; it need not be there yet.</param>
    public static AccessKeeping Beside(string file) => new(AccessFile.Beside(file), new ProcessTally());

    /// <summary>That of a journal in a database; null for one in a file.</summary>
    public static AccessKeeping? In(IJournal journal) => JournalPlace.AccessOf(journal) is var (page, tries) ? new(new AccessDatabase(page), new SharedTally(tries)) : null;
}
