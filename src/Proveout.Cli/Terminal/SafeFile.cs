using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Writes files whole, or says in a sentence why they are not written.</summary>
internal static class SafeFile
{
    /// <summary>Puts a file in the place of what was there; says why when it cannot.</summary>
    public static Diagnostic? TryWrite(string path, Action<Stream> write)
    {
        try
        {
            WholeFile.Replace(path, write);
            return null;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return new Diagnostic("unwritable-file", new SourcePlace(path, 0, 0), "The file cannot be written.", "See that its folder may be written and has room, or give another place.");
        }
    }
}
