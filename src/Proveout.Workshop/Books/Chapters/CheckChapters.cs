using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Publish.Books;
using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>The checks of the plan, a chapter for each state in which the dead machine is measured.</summary>
internal sealed class CheckChapters : IBookChapters
{
    private const int MostMistakes = 3;

    public IEnumerable<BookChapter> Of(BookCase book)
    {
        var number = 0;
        return
        [
            .. from setUp in book.Planned.Plan.Checks.GroupBy(check => book.Planned.Dictionary.Checks[check].SetUp)
               select ChapterOf(book, book.Planned.Dictionary.SetUps.First(candidate => candidate.Id == setUp.Key), [.. setUp], () => ++number),
        ];
    }

    private static BookChapter ChapterOf(BookCase book, SetUp setUp, int[] checks, Func<int> next)
    {
        var ids = checks.Select(check => book.Planned.Dictionary.Checks[check].Id).ToHashSet(StringComparer.Ordinal);
        return new(
            PlainNames.Of($"checks {setUp.Id}"),
            $"Checks: {setUp.Title}",
            "Each with what is good, and what a wrong reading means: the mistakes that the check surely shows, most dangerous first.",
            [
                new BookCautions(setUp.Cautions),
                new BookHeading("To get there"),
                new BookList(setUp.Instructions) { IsNumbered = true },
                new BookHeading("Checks"),
                new BookTable(
                    setUp.Title,
                    [new("No.", 0.5), new("Check", 3), new("Good", 1.4), new("A wrong reading means", 3.2), .. book.Story is null ? Array.Empty<ScheduleColumn>() : [new("Read here", 1.2)]],
                    [.. checks.Select(check => RowOf(book, check, next()))]) { IndexedColumns = [1] },
                .. book.Story?.PhotographsOf(book.Design, ids.Contains) ?? [],
            ]);
    }

    private static string[] RowOf(BookCase book, int index, int number)
    {
        var check = book.Planned.Explained(index);
        return
        [
            FormattableString.Invariant($"{number}"),
            check.Title,
            CheckWords.Expected(check),
            MeaningOf(book.Planned, index),
            .. book.Story is { } story ? [ReadOf(story, check.Id)] : Array.Empty<string>(),
        ];
    }

    private static string ReadOf(BuildStory story, string checkId) => story.State.FindStep(checkId) is not { } step ? "" : step.Status switch
    {
        StepStatus.Passed => $"{step.ReadingShown}, good",
        StepStatus.Failed => $"{step.ReadingShown}, wrong",
        StepStatus.CannotTell => $"{step.ReadingShown}, cannot tell",
        StepStatus.Skipped => "left out",
        _ => "",
    };

    private static string MeaningOf(PlannedMachine planned, int check)
    {
        Fault[] shown =
        [
            .. planned.Dictionary.Faults.Index()
                .Where(fault => planned.Dictionary.IsSurelyCaught(fault.Index, check))
                .Select(fault => fault.Item)
                .OrderByDescending(fault => fault.Severity)
                .ThenByDescending(fault => fault.Prior),
        ];
        var words = string.Join(" ", shown.Take(MostMistakes).Select(fault => $"{Capital.Of(SeverityWords.Of(fault.Severity))}: {fault.Sentence}"));
        return shown.Length > MostMistakes ? FormattableString.Invariant($"{words} And {shown.Length - MostMistakes} more.") : words;
    }
}
