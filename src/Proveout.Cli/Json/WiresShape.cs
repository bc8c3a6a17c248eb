using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>A wire list that went out.</summary>
internal sealed record WireListShape(string Format, string Machine, int Wires, string File);

/// <summary>What a wire list that came in changes.</summary>
internal sealed record WireImportShape(
    string Format,
    string Machine,
    IReadOnlyList<string> Changed,
    IReadOnlyList<string> Added,
    IReadOnlyList<string> Removed,
    IReadOnlyList<string> Unlisted,
    IReadOnlyList<DifferenceShape> Changes,
    int Revision)
{
    public static WireImportShape Of(string machine, WireImport import, int revision) => new(
        "proveout-wire-import 1", machine, import.Changed, import.Added, import.Removed, import.Unlisted, [.. import.Changes.Select(DifferenceShape.Of)], revision);
}
