using Proveout.Engine.Machine;
using Proveout.Journal;
using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>Looks for people where a book would hand them on.</summary>
internal static class BookNames
{
    // Shorter ones are found in any file.
    private const int ShortestName = 3;

    /// <summary>Where the machine's files name a person of the record or the serial number: they are handed on as they are, so that is for their author to mend.</summary>
    public static IReadOnlyList<Diagnostic> InFiles(LoadedMachine machine, Build build, IReadOnlyList<Entry> entries) =>
    [
        .. from text in machine.Texts
           from line in text.Text.Split('\n').Index()
           from name in NoteSieve.PeopleOf(build, entries).Append(build.Serial)
           where name.Length >= ShortestName && NameWords.Holds(line.Item, name, StringComparison.Ordinal)
           select new Diagnostic(
               "name-in-machine-file",
               new SourcePlace(text.File, line.Index + 1, 1),
               "This line of the machine file names a person of the record or the serial number of the build, and the book hands the file on.",
               "Take it out of the file, or publish with --with-names."),
    ];

    /// <summary>The words that chapters say, in lower case.</summary>
    public static IReadOnlySet<string> Vocabulary(IEnumerable<BookChapter> chapters) =>
        chapters.SelectMany(chapter => chapter.Words).SelectMany(NameWords.Of).ToHashSet(StringComparer.Ordinal);
}
