namespace Proveout.Publish.Books;

/// <summary>A machine, and perhaps one build of it, told to those who build the same. Neutral: site and print say the same.</summary>
/// <param name="Machine">Name of the machine.</param>
/// <param name="Summary">What it is.</param>
/// <param name="Which">Which build it tells of; empty when it tells of none, or when that is nobody's business.</param>
/// <param name="Fingerprint">Fingerprint of the machine file.</param>
/// <param name="Licence">On what terms it may be used, in words.</param>
/// <param name="Credits">Whom or what it owes something to, a line each.</param>
/// <param name="Chapters">The chapters, in the order in which a builder needs them.</param>
/// <param name="Files">Files to take away, such as the machine file.</param>
public sealed record BuildBook(
    string Machine,
    string Summary,
    string Which,
    string Fingerprint,
    string Licence,
    IReadOnlyList<string> Credits,
    IReadOnlyList<BookChapter> Chapters,
    IReadOnlyList<BookFile> Files)
{
    /// <summary>What the book does not say; stands at its beginning and on every page of the site.</summary>
    public const string NotASafetyStatement =
        "This book does not say that a machine built after it is safe. Local codes and licensed practice come first.";

    /// <summary>The title.</summary>
    public string Title => Which.Length > 0 ? $"{Machine}, {Which}: build book" : $"{Machine}: build book";
}
