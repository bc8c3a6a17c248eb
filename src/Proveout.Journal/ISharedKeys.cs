namespace Proveout.Journal;

/// <summary>Keys that all servers of one database guard their forms with. They are no part of the record: whoever loses them loses forms that were open, and nothing else.</summary>
/// <remarks>Every member can throw <see cref="JournalUnavailableException"/>.</remarks>
public interface ISharedKeys
{
    /// <summary>All keys, as they were added.</summary>
    IReadOnlyList<string> Read();

    /// <summary>Adds a key; none is changed or removed.</summary>
    /// <param name="name">Names it.</param>
    /// <param name="text">The key.</param>
    void Add(string name, string text);

    /// <summary>Does work that no two servers are to do at the same time, such as to make the first key.</summary>
    void Alone(Action work);
}
