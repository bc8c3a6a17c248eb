namespace Proveout.Engine.Machine;

/// <summary>What the walls of a bay are made of.</summary>
public enum WallMaterial
{
    /// <summary>Sheet steel, painted.</summary>
    Steel,

    /// <summary>Aluminium, bare or painted.</summary>
    Aluminium,

    /// <summary>Plastic: sheet or printed.</summary>
    Plastic,

    /// <summary>Wood, plywood, fibreboard.</summary>
    Wood,
}
