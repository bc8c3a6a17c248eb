using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>What a part's data sheet says besides the ratings of its terminals; each is null when not known, and is then not reviewed.</summary>
public sealed record PartRatings
{
    /// <summary>No data.</summary>
    public static readonly PartRatings None = new();

    /// <summary>Share of what its sources take that they give.</summary>
    public Ratio? Efficiency { get; init; }

    /// <summary>Peak current for some milliseconds when it is switched on cold.</summary>
    public ElectricCurrent? Inrush { get; init; }

    /// <summary>Largest fault current that a protective device interrupts.</summary>
    public ElectricCurrent? Breaking { get; init; }

    /// <summary>Temperature of the air around it up to which it gives its full current.</summary>
    public Temperature? FullUpTo { get; init; }

    /// <summary>Share of its current that it loses with each kelvin above.</summary>
    public Ratio? Derating { get; init; }

    /// <summary>Voltage across an electronic switch while it conducts; its heat is that times the current.</summary>
    public ElectricPotential? Drop { get; init; }

    /// <summary>Current through an electronic switch while it is off.</summary>
    public ElectricCurrent? Leakage { get; init; }

    /// <summary>Least load current with which an electronic switch works.</summary>
    public ElectricCurrent? LeastLoad { get; init; }

    /// <summary>From the junction of an electronic switch to its base.</summary>
    public ThermalPath? JunctionToBase { get; init; }

    /// <summary>Temperature that the junction may reach.</summary>
    public Temperature? Junction { get; init; }

    /// <summary>From the base or metal of the part to the air.</summary>
    public ThermalPath? ToAir { get; init; }
}
