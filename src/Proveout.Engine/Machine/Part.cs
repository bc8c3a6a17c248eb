namespace Proveout.Engine.Machine;

/// <summary>One part of a machine.</summary>
/// <param name="Designation">Reference designation, IEC 81346-2 letter and number, such as <c>K1</c>; unique in the machine.</param>
/// <param name="Name">What it is for, in plain words.</param>
/// <param name="Type">Its part type, resolved from the catalogue or the machine's own types.</param>
/// <param name="Place">Where it sits, in plain words; empty when not said.</param>
/// <param name="Jumpers">Jumpers that are fitted, with their position; one not named here is not fitted.</param>
/// <param name="Values">Resistances that replace the type's own.</param>
public sealed record Part(
    string Designation,
    string Name,
    PartType Type,
    string Place,
    ValueList<JumperSetting> Jumpers,
    ValueList<ElementValue> Values);
