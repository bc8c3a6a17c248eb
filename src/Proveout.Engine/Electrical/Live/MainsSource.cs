using System.Numerics;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The mains in front of the machine: voltage, impedances, earthing and what protects the outlet.</summary>
/// <param name="Volts">Line-to-neutral voltage, rms.</param>
/// <param name="Hertz">Frequency.</param>
/// <param name="Earthing">Type of system earthing, IEC 60364-1 clause 312.2.</param>
/// <param name="LineOhms">Impedance of source and line conductor up to the outlet.</param>
/// <param name="NeutralOhms">Impedance of the neutral conductor from the star point to the outlet.</param>
/// <param name="SharedOhms">Part of <paramref name="NeutralOhms"/> that a combined conductor shares with the protective one (TN-C-S); 0 otherwise.</param>
/// <param name="ProtectiveOhms">
/// TN: resistance of the protective conductor between the outlet and the star point, or the point where it parts from the neutral.
/// TT and IT: resistance of the installation's earth electrode.
/// </param>
/// <param name="SourceEarthOhms">Resistance between the star point and earth.</param>
/// <param name="BreakerAmperes">Rated current of the circuit-breaker before the outlet.</param>
/// <param name="BreakerCurve">Its characteristic.</param>
/// <param name="ResidualAmperes">Rated residual current of the residual-current device before the outlet; null when there is none.</param>
public sealed record MainsSource(
    double Volts,
    double Hertz,
    SystemEarthing Earthing,
    Complex LineOhms,
    double NeutralOhms,
    double SharedOhms,
    double ProtectiveOhms,
    double SourceEarthOhms,
    double BreakerAmperes,
    FuseCurve BreakerCurve,
    double? ResidualAmperes)
{
    /// <summary>What is assumed of the mains where the machine file says no more than voltage, frequency and earthing.</summary>
    /// <remarks>
    /// External loop impedance 0.8 ohm (TN-S) and 0.35 ohm (TN-C-S): usual declared maxima of network operators, from memory; each conductor of the
    /// final circuit 0.15 ohm (20 m of 2.5 mm²). Electrodes: 100 ohm for a TT or IT installation and 10 ohm for a source, common practice.
    /// An IT source has about 10 kohm of leakage to earth, from memory. Circuit-breaker B 16 A. A residual-current device of 30 mA is counted on
    /// only where the earthing needs one (TT, IEC 60364-4-41 clause 411.5.3), or where the machine file says that it is there: in a TN system it may be missing.
    /// </remarks>
    public static MainsSource Of(MainsSupply mains)
    {
        const double FinalOhms = 0.15;
        var (line, neutral, shared, protective, sourceEarth) = mains.Earthing switch
        {
            SystemEarthing.TnS => (0.25, 0.25, 0.0, 0.55, 2.0),
            SystemEarthing.TnCS => (0.20, 0.15, 0.15, 0.0, 2.0),
            SystemEarthing.TT => (0.25, 0.25, 0.0, 100.0, 10.0),
            _ => (0.25, 0.25, 0.0, 10.0, 10e3),
        };
        var toElectrode = mains.Earthing is SystemEarthing.TT or SystemEarthing.IT;
        return new(
            mains.Voltage.Volts,
            mains.Frequency.Hertz,
            mains.Earthing,
            new Complex(line + FinalOhms, 0.05),
            neutral + FinalOhms,
            shared,
            toElectrode ? protective : protective + FinalOhms,
            sourceEarth,
            16,
            FuseCurve.BreakerB,
            mains.ResidualCurrent?.Amperes ?? (mains.Earthing == SystemEarthing.TT ? 0.03 : null));
    }
}
