using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>A published book: docs/json.md, <c>proveout-book 1</c>.</summary>
internal sealed record BookShape(string Format, string Folder, IReadOnlyList<string> Files, IReadOnlyList<WithheldShape> Withheld)
{
    public static BookShape Of(string folder, PublishedBook book) => new(
        "proveout-book 1",
        folder,
        [.. book.Files.Select(file => file.Name)],
        [.. book.Withheld.Select(note => new WithheldShape(note.Sequence, note.Why, note.CanBeLetIn))]);
}

/// <summary>A free text that was left out.</summary>
internal sealed record WithheldShape(long Entry, string Why, bool CanBeLetIn);
