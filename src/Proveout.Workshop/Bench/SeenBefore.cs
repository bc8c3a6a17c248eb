using Proveout.Engine.Machine;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Whether an entry would overturn another that its maker has not seen: two at one machine, or an entry that waited for the link.</summary>
internal static class SeenBefore
{
    /// <summary>Sequence number of the reading that a draft corrects; null when it is the first of its check.</summary>
    /// <remarks>A repeated draft must say the same again, so the entry that it made already does not count as an earlier one.</remarks>
    public static int? LastReading(IReadOnlyList<Entry> entries, string checkId, Guid key) =>
        Before(entries, key).LastOrDefault(entry => ReadingOf(entry)?.CheckId == checkId)?.Sequence;

    /// <summary>Why the entry is not taken; null when it may be.</summary>
    /// <param name="entries">The journal of the build.</param>
    /// <param name="checkId">The check.</param>
    /// <param name="person">Who enters; what they entered themselves they have seen.</param>
    /// <param name="key">The entry's key.</param>
    public static Diagnostic? Refusal(IReadOnlyList<Entry> entries, string checkId, string person, Guid key) =>
        Before(entries, key).LastOrDefault(entry => CheckOf(entry) == checkId) is { } other && other.Person != person
            ? Refusals.NotSeen(other.Person, ReadingOf(other)?.Text)
            : null;

    private static IEnumerable<Entry> Before(IReadOnlyList<Entry> entries, Guid key) => entries.TakeWhile(entry => entry.Key != key);

    private static string? CheckOf(Entry entry) => entry.Content is CheckSkipped skipped ? skipped.CheckId : ReadingOf(entry)?.CheckId;

    private static Journal.Reading? ReadingOf(Entry entry) => entry.Content switch
    {
        ReadingEntered entered => entered.Reading,
        ReadingCorrected corrected => corrected.Reading,
        _ => null,
    };
}
