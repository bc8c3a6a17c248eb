using UnitsNet;

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
    ValueList<ElementValue> Values)
{
    /// <summary>Where it is mounted; null when not said.</summary>
    public Placement? Placement { get; init; }

    /// <summary>Its own outline, where that differs from its type's; null when it does not.</summary>
    public Outline? OwnSize { get; init; }

    /// <summary>How far its terminals are from the end of the routes that lead to it, when it is not mounted on a surface; null when not said.</summary>
    public Length? Reach { get; init; }

    /// <summary>Spare length that each conductor keeps at this part; null for that of its surface.</summary>
    public Length? Slack { get; init; }

    /// <summary>The room that it takes, in the position its type is drawn in; null when not known.</summary>
    public Outline? Size => OwnSize ?? Type.Size;
}
