namespace Proveout.Engine.Machine;

/// <summary>A part as a file gives it: its type is still a name.</summary>
/// <param name="Designation">Reference designation.</param>
/// <param name="Type">Identifier of its type; empty when it could not be read.</param>
/// <param name="Name">What it is for.</param>
/// <param name="Place">Where it sits.</param>
/// <param name="Jumpers">Jumpers that are fitted.</param>
/// <param name="Values">Resistances given anew.</param>
internal sealed record PartEntry(
    string Designation,
    string Type,
    string Name,
    string Place,
    ValueList<JumperSetting> Jumpers,
    ValueList<ElementValue> Values)
{
    public static PartEntry Of(Part part) => new(part.Designation, part.Type.Id, part.Name, part.Place, part.Jumpers, part.Values);

    public Part ToPart(PartType type) => new(Designation, Name, type, Place, Jumpers, Values);
}
