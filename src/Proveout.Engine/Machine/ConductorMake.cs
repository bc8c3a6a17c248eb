using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>What a conductor is made of besides copper and colour; each is null when not said, and is then not reviewed.</summary>
public sealed record ConductorMake
{
    /// <summary>Nothing said.</summary>
    public static readonly ConductorMake Unsaid = new();

    /// <summary>How its copper is made up.</summary>
    public StrandKind? Strands { get; init; }

    /// <summary>How its first end is dressed.</summary>
    public EndKind? FromEnd { get; init; }

    /// <summary>How its second end is dressed.</summary>
    public EndKind? ToEnd { get; init; }

    /// <summary>Rated voltage of its insulation.</summary>
    public ElectricPotential? Insulation { get; init; }

    /// <summary>Diameter over the insulation, or of the cable that it is a core of.</summary>
    public Length? Diameter { get; init; }

    /// <summary>The cable that it is a core of; empty when it is a single wire.</summary>
    public string Cable { get; init; } = "";

    /// <summary>True when its maker rates it for continuous flexing, false when not.</summary>
    public bool? Flexing { get; init; }

    /// <summary>False when it carries no label.</summary>
    public bool Labelled { get; init; } = true;
}
