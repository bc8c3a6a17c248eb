namespace Proveout.Workshop;

/// <summary>Writes files whole or not at all.</summary>
public static class WholeFile
{
    /// <summary>Puts a file in the place of what was there; its folder is made where there is none.</summary>
    /// <exception cref="IOException">The disk is full or damaged, or the place is taken by a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The place may not be written.</exception>
    public static void Replace(string path, Action<Stream> write) => Write(path, write, overwrite: true);

    /// <summary>Makes a file that is not there yet; false when it is, even when another process made it this very moment.</summary>
    /// <exception cref="IOException">The disk is full or damaged.</exception>
    /// <exception cref="UnauthorizedAccessException">The place may not be written.</exception>
    public static bool TryCreate(string path, ReadOnlyMemory<byte> content)
    {
        if (File.Exists(path))
            return false;
        try
        {
            Write(path, stream => stream.Write(content.Span), overwrite: false);
            return true;
        }
        catch (IOException) when (File.Exists(path))
        {
            return false;
        }
    }

    private static void Write(string path, Action<Stream> write, bool overwrite)
    {
        var full = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        var unfinished = $"{full}.{Guid.NewGuid():N}.unfinished";
        try
        {
            using (var stream = new FileStream(unfinished, FileMode.CreateNew))
            {
                write(stream);
                // What is said to be saved is on the disk before it takes its name.
                stream.Flush(flushToDisk: true);
            }

            File.Move(unfinished, full, overwrite);
        }
        finally
        {
            File.Delete(unfinished);
        }
    }
}
