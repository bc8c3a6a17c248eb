using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A way of air between a bay and the room: a hole, a grille, a fan, each with what the air must pass.</summary>
/// <param name="Name">What it is called, such as <c>left slots</c>.</param>
/// <param name="Size">Its width and height.</param>
public sealed record BayOpening(string Name, Outline Size)
{
    /// <summary>Share of its area that is free; null for all of it.</summary>
    public Ratio? Open { get; init; }

    /// <summary>Sharp bends of a right angle on the way.</summary>
    public int Bends { get; init; }

    /// <summary>Its filter; null when it has none.</summary>
    public BayFilter? Filter { get; init; }

    /// <summary>Its fan; null when air passes by itself.</summary>
    public BayFan? Fan { get; init; }
}
