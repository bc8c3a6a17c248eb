using Proveout.Engine.Electrical;
using Proveout.Journal;
using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>What was otherwise on the build that the book tells of: others come upon the same.</summary>
internal sealed class DifferencesChapter : IBookChapters
{
    public IEnumerable<BookChapter> Of(BookCase book)
    {
        if (book.Story is not { } story)
            yield break;
        yield return new(
            "differences",
            "What was otherwise here",
            "Mistakes that were made and found, parts that came otherwise, and where this build differs from guide and machine file.",
            [
                new BookHeading("Mistakes made and mended"),
                .. Listed(story.Entries.Select(entry => entry.Content is MistakeFound mistake ? MistakeOf(book, story, entry.Sequence, mistake) : "")),
                new BookHeading("Readings that were wrong at last"),
                .. Listed(story.State.Steps.Where(step => step.Status == StepStatus.Failed).Select(step => $"{step.Check.Title}: read {step.ReadingShown}, good is {step.Expected}.")),
                new BookHeading("Parts that came otherwise"),
                .. Listed(story.Entries.Select(entry => entry.Content is PartReceived received ? PartOf(book, story, entry.Sequence, received) : "")),
                new BookHeading("Deviations and notes"),
                .. Listed(story.Entries.Select(entry => NoteOf(book, story, entry))),
                new BookHeading("Checks left out"),
                .. Listed(story.State.Steps.Where(step => step.Status == StepStatus.Skipped).Select(step => SkippedOf(story, step))),
                new BookHeading("Further photographs"),
                .. story.PhotographsOf(book.Design, subject => !IsShownElsewhere(book, subject)),
                .. SignOffs(story),
            ]);
    }

    private static bool IsShownElsewhere(BookCase book, string subject) =>
        StepsChapter.Shows(book.Design, subject)
        || (book.Planned.Dictionary.IndexOfCheck(subject) is { } check && book.Planned.Plan.Checks.Contains(check));

    private static BookBlock[] Listed(IEnumerable<string> lines)
    {
        string[] said = [.. lines.Where(line => line.Length > 0)];
        return [said.Length > 0 ? new BookList(said) : new BookText("None that could be told.")];
    }

    private static string MistakeOf(BookCase book, BuildStory story, long sequence, MistakeFound mistake)
    {
        var note = story.Notes.Take(sequence, mistake.Note);
        return book.Planned.Dictionary.Faults.FirstOrDefault(fault => fault.Id == mistake.FaultId) is { } fault
            ? $"{fault.Sentence} {fault.Consequence} {note}".TrimEnd()
            : WiringFaultRules.All.FirstOrDefault(rule => rule.Kind == mistake.FaultKind) is { } rule ? $"Of this kind: {rule.Words}. {note}".TrimEnd() : note;
    }

    private static string PartOf(BookCase book, BuildStory story, long sequence, PartReceived received)
    {
        if (received.Arrival == PartArrival.Got)
            return "";
        var (subject, note) = (story.SubjectOf(book.Design, sequence, received.Designation), story.Notes.Take(sequence, received.Note));
        var came = received.Arrival == PartArrival.Missing ? "did not come." : "came as another one.";
        return $"{(subject.Length > 0 ? subject : "A part")} {came} {note}".TrimEnd();
    }

    private static string NoteOf(BookCase book, BuildStory story, Entry entry)
    {
        var (subject, text) = entry.Content switch
        {
            Deviation deviation => (story.SubjectOf(book.Design, entry.Sequence, deviation.Subject), story.Notes.Take(entry.Sequence, deviation.Note)),
            NoteWritten note => ("", story.Notes.Take(entry.Sequence, note.Text)),
            _ => ("", ""),
        };
        return text.Length == 0 || subject.Length == 0 ? text : $"{subject}: {text}";
    }

    private static string SkippedOf(BuildStory story, BenchStep step)
    {
        var entry = story.Entries.Last(entry => entry.Content is CheckSkipped skipped && skipped.CheckId == step.Check.Id);
        return story.Notes.Take(entry.Sequence, step.Reason) is { Length: > 0 } reason ? $"{step.Check.Title}: {reason}" : step.Check.Title;
    }

    private static IEnumerable<BookBlock> SignOffs(BuildStory story) => !story.Notes.WithNames || story.State.SignOffs.Count == 0 ? [] :
    [
        new BookHeading("Signatures"),
        new BookList([.. story.State.SignOffs.Select(signed => FormattableString.Invariant($"{signed.Person}, {signed.Role}, {signed.When.ToUniversalTime():yyyy-MM-dd HH:mm} UTC: {signed.Statement}"))]),
    ];
}
