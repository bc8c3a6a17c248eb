using Proveout.Engine.Machine;
using Proveout.Journal;
using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>What a build has to tell to those who build the same machine.</summary>
/// <param name="Build">The build.</param>
/// <param name="State">Where it stands.</param>
/// <param name="Entries">Its record.</param>
/// <param name="Photographs">Its photographs made ready, by the SHA-256 of the file; null for one that cannot be shown.</param>
/// <param name="Measurements">What was measured on it.</param>
/// <param name="Notes">Lets its free texts in, or keeps them out.</param>
internal sealed record BuildStory(
    Build Build,
    BenchState State,
    IReadOnlyList<Entry> Entries,
    IReadOnlyDictionary<string, PublishedPhotograph?> Photographs,
    IReadOnlyList<KeptMeasurement> Measurements,
    NoteSieve Notes)
{
    /// <summary>The photographs that can be shown, in the order in which they were attached, each once.</summary>
    public IEnumerable<(Entry Entry, PhotoAttached About, PublishedPhotograph Picture)> Shown =>
        from entry in Entries
        let about = entry.Content as PhotoAttached
        where about is not null && Photographs.GetValueOrDefault(about.Sha256) is not null
        select (entry, about, Photographs[about.Sha256]!);

    /// <summary>The photographs of some things, as pieces of a chapter.</summary>
    /// <param name="design">The machine, whose words stand for its identifiers.</param>
    /// <param name="wanted">Chooses by what a photograph is said to show.</param>
    public IEnumerable<BookBlock> PhotographsOf(MachineDesign design, Func<string, bool> wanted) =>
        from shown in Shown
        where wanted(shown.About.Subject)
        select new BookPhotograph(
            FormattableString.Invariant($"photograph-{shown.Entry.Sequence}"),
            shown.Picture,
            string.Join(": ", new[] { SubjectOf(design, shown.Entry.Sequence, shown.About.Subject), Notes.Take(shown.Entry.Sequence, shown.About.Caption) }.Where(words => words.Length > 0)) is { Length: > 0 } words
                ? words
                : "Photograph of the build");

    /// <summary>What an entry is about, in words; empty when it does not say, or may not.</summary>
    public string SubjectOf(MachineDesign design, long sequence, string subject) =>
        State.FindStep(subject) is { } step ? step.Check.Title
        : design.FindPart(subject) is { } part ? $"{part.Designation}, {part.Name}"
        : design.Conductors.Any(conductor => conductor.Id == subject) ? subject
        : Notes.Take(sequence, subject);
}
