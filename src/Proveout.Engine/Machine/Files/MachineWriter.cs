namespace Proveout.Engine.Machine;

/// <summary>Writes machine files.</summary>
public static class MachineWriter
{
    /// <summary>Text that reads as an equal machine.</summary>
    /// <param name="design">The machine.</param>
    /// <param name="catalogue">
    /// The catalogue that the text will be read with: types that it does not hold, or holds otherwise, are written into the file.
    /// Without one all types are, so that the file stands on its own.
    /// </param>
    /// <exception cref="ArgumentException">Two parts have different types of one identifier.</exception>
    public static string Write(MachineDesign design, Catalogue? catalogue = null)
    {
        var document = new MachineDocument(
            new(design.Name, design.Summary, design.Mains),
            OwnTypes(design, catalogue),
            design.Parts.Select(PartEntry.Of).ToValueList(),
            design.Surfaces,
            design.Rails,
            design.Routes,
            design.Conductors,
            design.Heated,
            design.Review,
            design.Mistakes)
        {
            Motion = design.Motion,
            Later = design.Later,
            Bays = design.Bays,
        };
        return NodeWriter.Write((MappingNode)MachineDocument.Shape.Write(document));
    }

    private static ValueList<PartType> OwnTypes(MachineDesign design, Catalogue? catalogue)
    {
        var types = design.Parts.Select(part => part.Type).Distinct().ToList();
        if (types.GroupBy(type => type.Id, StringComparer.Ordinal).FirstOrDefault(same => same.Skip(1).Any()) is { } twice)
            throw new ArgumentException($"The machine has two different types with the identifier {twice.Key}.", nameof(design));
        return types.Where(type => catalogue?.FindType(type.Id) is not { } known || !known.Equals(type)).ToValueList();
    }
}
