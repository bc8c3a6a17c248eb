using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Reads text files that commands are given.</summary>
internal static class TextFiles
{
    private const long MostBytes = 20_000_000;

    /// <summary>A file's text; nothing when no path was given.</summary>
    public static ReadText Read(string? path)
    {
        if (path is null)
            return new(null, null);
        try
        {
            return new FileInfo(path).Length > MostBytes
                ? new(null, new Diagnostic("large-file", new SourcePlace(path, 0, 0), "The file is larger than 20 MB.", "Thin the data out."))
                : new(new NamedText(path, File.ReadAllText(path)), null);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return new(null, new Diagnostic("unreadable-file", new SourcePlace(path, 0, 0), "The file cannot be read.", "See that the path is right and that you may read it."));
        }
    }
}

/// <summary>A text, or why there is none; neither when none was asked for.</summary>
internal readonly record struct ReadText(NamedText? Text, Diagnostic? Problem);
