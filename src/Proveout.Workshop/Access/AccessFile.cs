using System.Text.Json;

namespace Proveout.Workshop;

/// <summary>The access book in a file beside the journal that only its owner can read.</summary>
/// <remarks>It is changed under a lock, and replaced whole: a stop half way leaves the old one.</remarks>
/// <param name="path">The file; it need not be there yet.</param>
public sealed class AccessFile(string path) : IAccessStore
{
    private const long MostBytes = 10_000_000;
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(10);
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(20);

    /// <inheritdoc/>
    public string Place => path;

    /// <summary>The store of a journal.</summary>
    public static AccessFile Beside(string journal) => new(journal + ".access");

    /// <inheritdoc/>
    public AccessBook Read()
    {
        try
        {
            if (!File.Exists(path))
                return AccessBook.Empty;
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            if (stream.Length > MostBytes)
                throw NoBook(null);
            return AccessPages.BookOf(JsonSerializer.Deserialize(stream, AccessJson.Default.AccessPage)) ?? throw NoBook(null);
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

    /// <inheritdoc/>
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
        var full = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
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
        var full = Path.GetFullPath(path);
        var unfinished = full + ".unfinished";
        File.Delete(unfinished);
        using (var stream = new FileStream(unfinished, Private(FileMode.CreateNew)))
        {
            JsonSerializer.Serialize(stream, AccessPages.Of(book), AccessJson.Default.AccessPage);
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
