using System.Text.Json;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>The access book in the database of the journal, one for all its servers.</summary>
/// <param name="page">The page that they share.</param>
public sealed class AccessDatabase(ISharedPage page) : IAccessStore
{
    // Read once and not at each question: the database says whether it is still so.
    private volatile ReadBook? _last;

    /// <inheritdoc/>
    public string Place => page.Place;

    /// <inheritdoc/>
    public AccessBook Read()
    {
        try
        {
            var last = _last;
            var text = page.Read(last?.Text);
            if (last is null || !ReferenceEquals(text, last.Text))
                _last = last = new ReadBook(text!, BookOf(text));
            return last.Book;
        }
        catch (JournalException cause)
        {
            throw Closed(cause);
        }
    }

    /// <inheritdoc/>
    public T Change<T>(Func<AccessBook, (AccessBook Book, T Answer)> change)
    {
        try
        {
            return page.Change(text =>
            {
                var before = BookOf(text);
                var (after, answer) = change(before);
                return (ReferenceEquals(before, after) ? null : AccessPages.Write(after), answer);
            });
        }
        catch (JournalException cause)
        {
            throw Closed(cause);
        }
    }

    private AccessBook BookOf(SharedText? text)
    {
        try
        {
            return text is { Content: "" } ? AccessBook.Empty : text is null ? throw NoBook(null) : AccessPages.Read(text.Content) ?? throw NoBook(null);
        }
        catch (JsonException cause)
        {
            throw NoBook(cause);
        }
    }

    private AccessException NoBook(Exception? cause) =>
        new($"The database {Place} does not hold who may come in, so nobody is let in. Restore its schema proveout_servers from a backup; if a newer Proveout wrote it, use that one.", cause);

    private static AccessException Closed(JournalException cause) => new($"Nobody is let in: who may come in is kept in the database. {cause.Message}", cause);

    private sealed record ReadBook(SharedText Text, AccessBook Book);
}
