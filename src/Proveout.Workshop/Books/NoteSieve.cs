using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>
/// Lets free text of a record into a book, or keeps it out. People who are known to the record are recognised by name. Others are not, so a text goes in only when
/// each of its words stands elsewhere in the book too, and is therefore no secret; or when the author has read the entry and says that it may.
/// </summary>
/// <param name="build">The build.</param>
/// <param name="entries">Its record.</param>
/// <param name="request">What the author says.</param>
/// <param name="vocabulary">Words that the book says anyway, in lower case.</param>
internal sealed class NoteSieve(Build build, IReadOnlyList<Entry> entries, BookRequest request, IReadOnlySet<string> vocabulary)
{
    private const int MostWordsShown = 5;
    private const int ShortestSerialInside = 3;

    private readonly HashSet<string> _people = [.. PeopleOf(build, entries).SelectMany(NameWords.Of)];
    private readonly SortedDictionary<long, WithheldNote> _withheld = [];

    /// <summary>Names of people that the record knows.</summary>
    public static IEnumerable<string> PeopleOf(Build build, IReadOnlyList<Entry> entries) =>
        entries.Select(entry => entry.Person)
            .Concat(entries.Select(entry => entry.Content).OfType<SignedOff>().Select(signed => signed.Person))
            .Append(build.Builder)
            .Where(person => person.Length > 0)
            .Distinct(StringComparer.Ordinal);

    /// <summary>True when names may go in.</summary>
    public bool WithNames => request.WithNames;

    /// <summary>What was kept out so far, by entry.</summary>
    public IReadOnlyList<WithheldNote> Withheld => [.. _withheld.Values];

    /// <summary>The text if it may go in; empty when it may not, or is empty.</summary>
    /// <param name="sequence">The entry that it stands in.</param>
    /// <param name="text">The text.</param>
    public string Take(long sequence, string text)
    {
        if (text.Length == 0 || request.WithNames || WhyNot(sequence, text) is not { } withheld)
            return text;
        // The graver reason stands.
        if (!_withheld.TryGetValue(sequence, out var earlier) || earlier.CanBeLetIn)
            _withheld[sequence] = withheld;
        return "";
    }

    private WithheldNote? WhyNot(long sequence, string text)
    {
        var words = NameWords.Of(text).ToArray();
        if (words.Any(_people.Contains) || NamesTheBuild(text))
            return new(sequence, "It names a person or this build.", CanBeLetIn: false);
        if (request.Notes.Contains(sequence))
            return null;
        if (NameWords.SaysTimeOrNumber(text) || text.Contains('@', StringComparison.Ordinal))
            return new(sequence, "It says a time of day, an address or a long number.", CanBeLetIn: true);
        var strange = words.Where(word => !vocabulary.Contains(word)).Distinct().ToArray();
        return strange.Length == 0 ? null : new(
            sequence,
            $"{string.Join(", ", strange.Take(MostWordsShown).Select(word => $"`{word}`"))}{(strange.Length > MostWordsShown ? " and others" : "")} could be a name: the rest of the book does not say {(strange.Length == 1 ? "it" : "them")}.",
            CanBeLetIn: true);
    }

    private bool NamesTheBuild(string text) =>
        NameWords.Holds(text, build.Serial, StringComparison.OrdinalIgnoreCase)
        || (build.Serial.Length >= ShortestSerialInside && text.Contains(build.Serial, StringComparison.OrdinalIgnoreCase))
        || text.Contains(build.Id.ToString(), StringComparison.OrdinalIgnoreCase);
}
