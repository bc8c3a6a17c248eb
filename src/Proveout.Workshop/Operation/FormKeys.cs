using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Keys that the servers of one journal share, so that each takes the forms that another gave out.</summary>
public sealed class FormKeys
{
    private readonly ISharedKeys _keys;

    private FormKeys(ISharedKeys keys) => _keys = keys;

    /// <summary>The keys beside a journal; null for a journal in a file, whose server keeps its own while it runs.</summary>
    public static FormKeys? Beside(IJournal journal) => JournalPlace.KeysOf(journal) is { } keys ? new FormKeys(keys) : null;

    /// <summary>All keys, as they were added.</summary>
    /// <exception cref="JournalException">They cannot be read.</exception>
    public IReadOnlyList<string> Read() => _keys.Read();

    /// <summary>Adds a key.</summary>
    /// <exception cref="JournalException">It cannot be kept.</exception>
    public void Add(string name, string text) => _keys.Add(name, text);

    /// <summary>Does work that no two servers are to do at the same time.</summary>
    /// <exception cref="JournalException">The turn does not come.</exception>
    public void Alone(Action work) => _keys.Alone(work);
}
