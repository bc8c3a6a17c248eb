using Proveout.Engine.Machine;

namespace Proveout.Cli;

/// <summary>Writes files whole or not at all.</summary>
internal static class SafeFile
{
    /// <summary>Writes to a neighbour of the file first, and puts it in place when it is complete; says why when it cannot.</summary>
    public static Diagnostic? TryWrite(string path, Action<Stream> write)
    {
        try
        {
            Write(path, write);
            return null;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return new Diagnostic("unwritable-file", new SourcePlace(path, 0, 0), "The file cannot be written.", "See that its folder may be written and has room, or give another place.");
        }
    }

    private static void Write(string path, Action<Stream> write)
    {
        var full = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        var unfinished = $"{full}.unfinished";
        try
        {
            using (var stream = File.Create(unfinished))
            {
                write(stream);
                // What is said to be written is on the disk before it takes the place of what was there.
                stream.Flush(flushToDisk: true);
            }

            File.Move(unfinished, full, overwrite: true);
        }
        finally
        {
            File.Delete(unfinished);
        }
    }
}
