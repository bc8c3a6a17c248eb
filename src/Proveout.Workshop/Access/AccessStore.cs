using System.Text.Json;

namespace Proveout.Workshop;

/// <summary>The access book in a file beside the journal that only its owner can read.</summary>
/// <remarks>
/// It is read anew at every question, so that a person removed by another process is out at once. It is changed under a lock, and replaced whole: a stop half way leaves the old one.
/// </remarks>
/// <param name="path">The file; it need not be there yet.</param>
public sealed class AccessStore(string path)
{
    private const string Format = "proveout-access 1";

    // An earlier program would not ask for second factors, and forget them when it writes: it refuses this one.
    private const string FormatWithSecondFactors = "proveout-access 2";
    private const long MostBytes = 10_000_000;
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(10);
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(20);

    /// <summary>The file.</summary>
    public string Path => path;

    /// <summary>The store of a journal.</summary>
    public static AccessStore Beside(string journal) => new(journal + ".access");

    /// <summary>The book as it stands.</summary>
    /// <exception cref="AccessException">The file cannot be read, or holds no access book.</exception>
    public AccessBook Read()
    {
        try
        {
            if (!File.Exists(path))
                return AccessBook.Empty;
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            if (stream.Length > MostBytes)
                throw NoBook(null);
            var kept = JsonSerializer.Deserialize(stream, AccessJson.Default.AccessPage);
            return kept is { Format: Format or FormatWithSecondFactors, Book: { People: not null, Codes: not null, Sessions: not null } book } ? book : throw NoBook(null);
        }
        catch (JsonException cause)
        {
            throw NoBook(cause);
        }
        catch (Exception cause) when (cause is IOException or UnauthorizedAccessException)
        {
            throw new AccessException($"{path} cannot be read. See that it is yours and may be read by you.", cause);
        }
    }

    /// <summary>Changes the book, and says what came of it.</summary>
    /// <param name="change">The new book, or the same one for no change, and the answer.</param>
    /// <exception cref="AccessException">The file cannot be read or written.</exception>
    public T Change<T>(Func<AccessBook, (AccessBook Book, T Answer)> change)
    {
        try
        {
            using var turn = AwaitTurn();
            var before = Read();
            var (after, answer) = change(before);
            if (!ReferenceEquals(before, after))
                Write(after);
            return answer;
        }
        catch (Exception cause) when (cause is IOException or UnauthorizedAccessException)
        {
            throw new AccessException($"{path} cannot be written. See that its folder may be written and has room.", cause);
        }
    }

    private FileStream AwaitTurn()
    {
        var full = System.IO.Path.GetFullPath(path);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(full)!);
        for (var waited = TimeSpan.Zero; ; waited += Pause)
            try
            {
                return new FileStream(full + ".lock", Private(FileMode.OpenOrCreate));
            }
            catch (IOException) when (waited < LongestWait)
            {
                Thread.Sleep(Pause);
            }
    }

    private void Write(AccessBook book)
    {
        var full = System.IO.Path.GetFullPath(path);
        var unfinished = full + ".unfinished";
        File.Delete(unfinished);
        using (var stream = new FileStream(unfinished, Private(FileMode.CreateNew)))
        {
            JsonSerializer.Serialize(stream, new AccessPage(book.AsksForCodes ? FormatWithSecondFactors : Format, book), AccessJson.Default.AccessPage);
            stream.Flush(flushToDisk: true);
        }

        File.Move(unfinished, full, overwrite: true);
    }

    // Nobody else may read it, from the first moment on.
    private static FileStreamOptions Private(FileMode mode)
    {
        var options = new FileStreamOptions { Mode = mode, Access = FileAccess.ReadWrite, Share = FileShare.None };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        return options;
    }

    private AccessException NoBook(Exception? cause) =>
        new($"{path} does not hold who may come in, so nobody is let in. Restore it from a backup, or delete it and add the people anew.", cause);
}
