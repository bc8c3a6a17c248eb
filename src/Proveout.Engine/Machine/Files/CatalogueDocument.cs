namespace Proveout.Engine.Machine;

/// <summary>One catalogue file.</summary>
/// <param name="Types">Its part types.</param>
internal sealed record CatalogueDocument(ValueList<PartType> Types)
{
    public static readonly FormatName Format = new("proveout-parts", 1, "catalogue file");

    public static readonly RecordShape<CatalogueDocument> Shape = new(
        "catalogue file",
        [
            Format.Key<CatalogueDocument>(),
            Key<CatalogueDocument>.Needed("types", "Part types by identifier.", PartTypeShapes.Types, file => file.Types),
        ],
        fields => new(fields.Get<ValueList<PartType>>("types")));
}
