using System.Text;
using System.Text.RegularExpressions;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Writes a book to a folder: to one that is new, empty, or that a book was written to before. Never to another.</summary>
internal static partial class BookFolder
{
    /// <summary>Name of the file that says that the folder is one of ours, and which files in it are.</summary>
    public const string Marker = "proveout-book.txt";

    private const string FirstLine = "A build book, written by `proveout publish`. Publishing to this folder again replaces or removes the files named below, and no others.";

    /// <summary>Writes the files; the refusal when that cannot be done.</summary>
    public static IReadOnlyList<Diagnostic> Write(string folder, PublishedBook book)
    {
        if (Refusal(folder) is { } refusal)
            return [refusal];
        string[] names = [.. book.Files.Select(file => file.Name)];
        string[] left = [.. FilesBefore(folder).Except(names, StringComparer.Ordinal)];
        // The marker comes first and names both, so that a book that was broken off can be written anew.
        if (PutMarker(folder, [.. names, .. left]) is { } unmarked)
            return [unmarked];
        Diagnostic[] unwritten = [.. book.Files.Select(file => SafeFile.TryWrite(Path.Combine(folder, file.Name), stream => stream.Write(file.Bytes.Span))).OfType<Diagnostic>()];
        return unwritten.Length > 0 ? unwritten : [.. new[] { Remove(folder, left) ?? PutMarker(folder, names) }.OfType<Diagnostic>()];
    }

    /// <summary>Why nothing may be written to a folder; null when it may.</summary>
    public static Diagnostic? Refusal(string folder) =>
        File.Exists(folder) ? new Diagnostic("not-a-folder", new SourcePlace(folder, 0, 0), "There is a file of this name.", "Give the name of a folder with --to.")
        : !Directory.Exists(folder) || IsOurs(folder) || !Directory.EnumerateFileSystemEntries(folder).Any() ? LinkIn(folder)
        : new Diagnostic(
            "folder-not-ours",
            new SourcePlace(folder, 0, 0),
            $"The folder holds files, and none of them is {Marker}: it was not written by `proveout publish`, so nothing in it is touched.",
            "Give a new or empty folder with --to.");

    // Written through a link, a file would end up outside the folder.
    private static Diagnostic? LinkIn(string folder) =>
        Directory.Exists(folder) && Directory.EnumerateDirectories(folder, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 }).FirstOrDefault(inner => new DirectoryInfo(inner).LinkTarget is not null) is { } link
            ? new Diagnostic("link-in-folder", new SourcePlace(link, 0, 0), "This is a link to another place, and a book stays in its folder.", "Remove the link, or give another folder with --to.")
            : null;

    private static bool IsOurs(string folder) => MarkerLines(folder) is [FirstLine, ..];

    // A marker may come from anywhere: only names that a book can have count.
    private static IEnumerable<string> FilesBefore(string folder) => IsOurs(folder) ? MarkerLines(folder).Skip(1).Where(name => BookName().IsMatch(name)) : [];

    private static string[] MarkerLines(string folder) => File.Exists(Path.Combine(folder, Marker)) ? File.ReadAllLines(Path.Combine(folder, Marker)) : [];

    private static Diagnostic? PutMarker(string folder, IEnumerable<string> names)
    {
        var text = string.Concat(names.Order(StringComparer.Ordinal).Prepend(FirstLine).Select(line => $"{line}\n"));
        return SafeFile.TryWrite(Path.Combine(folder, Marker), stream => stream.Write(Encoding.UTF8.GetBytes(text)));
    }

    private static Diagnostic? Remove(string folder, IEnumerable<string> names)
    {
        foreach (var path in names.Select(name => Path.Combine(folder, name)))
            try
            {
                File.Delete(path);
            }
            catch (DirectoryNotFoundException)
            {
                // It is gone already, and its folder with it.
            }
            catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
            {
                return new Diagnostic("file-stays", new SourcePlace(path, 0, 0), "This file of the book before cannot be removed.", "See that it may be written, and publish again.");
            }

        return null;
    }

    [GeneratedRegex("^[a-z0-9][a-z0-9-]*(?:[./][a-z0-9][a-z0-9-]*)*$")]
    private static partial Regex BookName();
}
