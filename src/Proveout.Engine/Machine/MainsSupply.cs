using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>The mains that a machine is made for.</summary>
/// <param name="Voltage">Nominal line-to-neutral voltage, rms.</param>
/// <param name="Frequency">Nominal frequency.</param>
/// <param name="Earthing">Type of system earthing, IEC 60364-1 clause 312.2.</param>
public sealed record MainsSupply(ElectricPotential Voltage, Frequency Frequency, SystemEarthing Earthing)
{
    /// <summary>Rated residual current of the residual-current device that is known to guard the outlet; null when not said.</summary>
    public ElectricCurrent? ResidualCurrent { get; init; }
}
