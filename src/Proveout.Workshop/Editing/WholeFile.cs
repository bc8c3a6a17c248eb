namespace Proveout.Workshop;

/// <summary>Writes files whole or not at all.</summary>
internal static class WholeFile
{
    /// <summary>Puts a file in the place of what was there.</summary>
    public static void Replace(string path, ReadOnlySpan<byte> content) => Write(path, content, overwrite: true);

    /// <summary>Makes a file that is not there yet; false when it is, even when another process made it this very moment.</summary>
    public static bool TryCreate(string path, ReadOnlySpan<byte> content)
    {
        if (File.Exists(path))
            return false;
        try
        {
            Write(path, content, overwrite: false);
            return true;
        }
        catch (IOException) when (File.Exists(path))
        {
            return false;
        }
    }

    private static void Write(string path, ReadOnlySpan<byte> content, bool overwrite)
    {
        var unfinished = $"{path}.{Guid.NewGuid():N}.unfinished";
        try
        {
            using (var stream = new FileStream(unfinished, FileMode.CreateNew))
            {
                stream.Write(content);
                // What is said to be saved is on the disk before it takes its name.
                stream.Flush(flushToDisk: true);
            }

            File.Move(unfinished, path, overwrite);
        }
        finally
        {
            File.Delete(unfinished);
        }
    }
}
