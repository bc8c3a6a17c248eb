using UnitsNet;

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
    /// <summary>Where it is mounted; null when not said.</summary>
    public Placement? Placement { get; init; }

    /// <summary>Its own outline; null for that of its type.</summary>
    public Outline? OwnSize { get; init; }

    /// <summary>How far its terminals are from the end of the routes that lead to it; null when not said.</summary>
    public Length? Reach { get; init; }

    /// <summary>Spare length that each conductor keeps at it; null for that of its surface.</summary>
    public Length? Slack { get; init; }

    public static PartEntry Of(Part part) => new(part.Designation, part.Type.Id, part.Name, part.Place, part.Jumpers, part.Values)
    {
        Placement = part.Placement,
        OwnSize = part.OwnSize,
        Reach = part.Reach,
        Slack = part.Slack,
    };

    public Part ToPart(PartType type) => new(Designation, Name, type, Place, Jumpers, Values)
    {
        Placement = Placement,
        OwnSize = OwnSize,
        Reach = Reach,
        Slack = Slack,
    };
}
