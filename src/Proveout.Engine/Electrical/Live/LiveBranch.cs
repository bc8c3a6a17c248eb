using System.Numerics;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A branch of the live circuit, between two nodes; node −1 is earth.</summary>
/// <param name="Index">Number; the first ones are the elements of the wiring network under their own numbers.</param>
/// <param name="Kind">What it is.</param>
/// <param name="A">First node; of a junction the anode, of a source the positive pole.</param>
/// <param name="B">Second node.</param>
/// <param name="Siemens">Conductance while it conducts.</param>
/// <param name="Subject">Designation or conductor.</param>
/// <param name="Name">Name on the part.</param>
/// <param name="Element">The primitive; null for joints, copper, jumpers and what stands outside the machine.</param>
internal sealed record LiveBranch(
    int Index,
    LiveBranchKind Kind,
    int A,
    int B,
    double Siemens,
    string Subject,
    string Name,
    CircuitElement? Element)
{
    /// <summary>Voltage of a source, or forward voltage of a junction.</summary>
    public double Volts { get; init; }

    /// <summary>Highest current of a source; infinite when not limited.</summary>
    public double LimitAmperes { get; init; } = double.PositiveInfinity;

    /// <summary>Capacitance in farads.</summary>
    public double Farads { get; init; }

    /// <summary>Admittance at the mains frequency where it is more than the conductance; null otherwise.</summary>
    public Complex? Admittance { get; init; }

    /// <summary>Nodes of the port that feeds or closes it, and the voltage that this takes; null when none does.</summary>
    public (int A, int B, double Volts)? Port { get; init; }

    /// <summary>True when that port is fed with mains.</summary>
    public bool FedByMains { get; init; }

    /// <summary>The branch that takes at the input what a source gives; −1 when it has none.</summary>
    public int Input { get; init; } = -1;

    /// <summary>The command that closes it; −1 when none does.</summary>
    public int Command { get; init; } = -1;

    /// <summary>The control that moves it; −1 when none does.</summary>
    public int Control { get; init; } = -1;

    /// <summary>Positions of that control, as bits, in which it conducts.</summary>
    public ulong ClosedAt { get; init; }

    /// <summary>True when a source shuts off above its limit.</summary>
    public bool ShutsOff { get; init; }

    /// <summary>Rated current of a protective device; null when it is none, or opens by heat only.</summary>
    public double? RatedAmperes { get; init; }

    /// <summary>How fast the protective device interrupts.</summary>
    public FuseCurve Curve { get; init; }
}
