namespace Proveout.Journal;

/// <summary>A page that all servers of one database share: what one wrote another reads at once, and changes go one after the other. It is no part of the record.</summary>
/// <remarks>Every member can throw <see cref="JournalUnavailableException"/>.</remarks>
public interface ISharedPage
{
    /// <summary>Where it is, as people are told it.</summary>
    string Place { get; }

    /// <summary>The page as it stands.</summary>
    /// <param name="known">What was read before; the same is given back while nothing was changed, so that nothing is fetched or read twice.</param>
    /// <returns>Null when the page was taken away.</returns>
    SharedText? Read(SharedText? known);

    /// <summary>Changes the page while nobody else does.</summary>
    /// <param name="change">Gives the new content, or null for no change, and the answer. It is asked again when the connection broke before anything counted.</param>
    T Change<T>(Func<SharedText?, (string? Content, T Answer)> change);
}
