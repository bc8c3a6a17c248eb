using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A named way that conductors run: a duct, a channel, a drag chain.</summary>
/// <param name="Name">Name, unique in the machine.</param>
/// <param name="Kind">What carries the conductors.</param>
/// <param name="Note">Anything a builder should know; empty when nothing is.</param>
public sealed record Route(string Name, RouteKind Kind, string Note)
{
    /// <summary>Clear width and height inside, across the conductors; null when not said.</summary>
    public Outline? Inside { get; init; }

    /// <summary>The surface that it lies on or starts from; empty when neither.</summary>
    public string On { get; init; } = "";

    /// <summary>Its centre line on the surface, corner by corner; a single point is where it leaves the surface.</summary>
    public ValueList<PlanePoint> Path { get; init; } = [];

    /// <summary>Length of a conductor through it, where that does not follow from its path; null when not said.</summary>
    public Length? Length { get; init; }

    /// <summary>Smallest radius that it bends its conductors to; null when not said.</summary>
    public Length? BendRadius { get; init; }

    /// <summary>How conductors lie in it; null for what its kind says.</summary>
    public InstallationMethod? Method { get; init; }

    /// <summary>True when a partition keeps mains apart from extra-low voltage in it.</summary>
    public bool Partition { get; init; }

    /// <summary>Where its conductors are held against pull; null when not said.</summary>
    public StrainRelief? Relief { get; init; }

    /// <summary>Temperature of the air in it; null for that of the machine.</summary>
    public Temperature? Ambient { get; init; }

    /// <summary>True when its centre line lies on a surface.</summary>
    public bool LiesOnSurface => Path.Count > 1;
}
