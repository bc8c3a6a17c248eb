using System.Text.Json;

namespace Proveout.Workshop;

/// <summary>The access book as text, and back.</summary>
internal static class AccessPages
{
    private const string Format = "proveout-access 1";

    // An earlier program would not ask for second factors, and forget them when it writes: it refuses this one.
    private const string FormatWithSecondFactors = "proveout-access 2";

    /// <summary>The page of a book.</summary>
    public static AccessPage Of(AccessBook book) => new(book.AsksForCodes ? FormatWithSecondFactors : Format, book);

    /// <summary>The book of a page; null when it is none, or one of a later program.</summary>
    public static AccessBook? BookOf(AccessPage? page) =>
        page is { Format: Format or FormatWithSecondFactors, Book: { People: not null, Codes: not null, Sessions: not null } book } ? book : null;

    /// <summary>The text of a book.</summary>
    public static string Write(AccessBook book) => JsonSerializer.Serialize(Of(book), AccessJson.Default.AccessPage);

    /// <summary>The book of a text.</summary>
    /// <exception cref="JsonException">The text is no JSON of that shape.</exception>
    public static AccessBook? Read(string text) => BookOf(JsonSerializer.Deserialize(text, AccessJson.Default.AccessPage));
}
