using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>What the controllers have to be told.</summary>
internal sealed class SettingsChapter : IBookChapters
{
    private const string FromThisBuild = "Measured on the build that this book tells of; measure your own.";

    public IEnumerable<BookChapter> Of(BookCase book)
    {
        var designed = SettingsSheet.Of(book.Planned.Machine);
        var sheet = book.Story is { } story ? WithoutPeople(story, SettingsSheet.WithMeasurements(designed, "", Told(story))) : designed;
        return
        [
            new(
                "settings",
                "Settings",
                "What the controllers have to be told, with where each value comes from and what would change it.",
                [
                    new BookCautions(SettingsView.Cautions),
                    .. sheet.Groups.SelectMany(group => (BookBlock[])
                    [
                        new BookHeading(group.Title),
                        new BookText(string.Join(" ", [group.Purpose, .. group.Common])),
                        new BookTable(group.Title, [.. group.Headings.Select(heading => new Publish.Schedules.ScheduleColumn(heading))], [.. group.Rows]),
                    ]),
                    new BookHeading("Trials"),
                    .. MistakeBlocks.Of(sheet.Mistakes, "Wrong settings"),
                ]),
        ];
    }

    private static KeptMeasurement[] Told(BuildStory story) =>
    [
        .. story.Measurements.Select(kept => kept with
        {
            Title = story.Notes.Take(kept.Sequence, kept.Title) is { Length: > 0 } title ? title : "Measurement",
            Results = [.. kept.Results.Select((figure, at) => figure with { Name = story.Notes.Take(kept.Sequence, figure.Name) is { Length: > 0 } name ? name : FormattableString.Invariant($"figure {at + 1}") })],
        }),
    ];

    private static SettingsView WithoutPeople(BuildStory story, SettingsView sheet) => story.Notes.WithNames ? sheet : sheet with
    {
        Groups = [.. sheet.Groups.Select(group => group with { Settings = [.. group.Settings.Select(setting => setting.State == SettingState.Measured ? setting with { From = FromThisBuild } : setting)] })],
    };
}
