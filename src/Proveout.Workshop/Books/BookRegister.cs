using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>The register of chapters.</summary>
internal static class BookRegister
{
    // In the order in which a builder needs them.
    private static readonly IBookChapters[] All =
    [
        new OpeningChapters(), new ListChapters(), new DrawingChapters(), new ToolsChapter(), new StepsChapter(), new CheckChapters(), new WalkChapter(), new EnergisingChapter(),
        new BeltsChapter(), new HeatChapter(), new AirChapter(), new SettingsChapter(), new AcceptanceChapter(), new DifferencesChapter(), new OwnBuildChapter(),
    ];

    /// <summary>Every chapter of a book.</summary>
    public static IReadOnlyList<BookChapter> Of(BookCase book) => [.. All.SelectMany(source => source.Of(book)).SelectMany(ChapterParts.Of)];
}
