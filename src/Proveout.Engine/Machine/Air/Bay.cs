using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A closed room of the machine that holds parts which get warm, and the ways of air through it.</summary>
/// <param name="Name">What it is called, such as <c>bay</c>.</param>
/// <param name="Inside">Width, height and depth inside, as one stands before it.</param>
/// <param name="Openings">Its ways of air.</param>
public sealed record Bay(string Name, Outline Inside, ValueList<BayOpening> Openings)
{
    /// <summary>The surface whose parts are in it; empty when none is said.</summary>
    public string Surface { get; init; } = "";

    /// <summary>Further parts that are in it.</summary>
    public ValueList<string> Parts { get; init; } = [];

    /// <summary>What its walls are; null when not said.</summary>
    public BayWall? Wall { get; init; }

    /// <summary>Temperature of the room's air at its hottest; null when not said.</summary>
    public Temperature? Room { get; init; }

    /// <summary>Height above the sea; null when not said.</summary>
    public Length? Altitude { get; init; }

    /// <summary>What is known of single parts in it.</summary>
    public ValueList<BayContent> Contents { get; init; } = [];
}
