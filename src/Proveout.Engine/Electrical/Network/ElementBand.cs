using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What a dead primitive is to a meter: a band of resistance, or nothing at all.</summary>
internal static class ElementBand
{
    /// <summary>Highest test current that a hand-held meter drives on its resistance ranges, in amperes; common practice.</summary>
    public const double TestCurrentAmperes = 1e-3;

    /// <summary>Highest voltage that it puts across open leads, in volts; common practice.</summary>
    public const double OpenCircuitVolts = 3.3;

    /// <summary>The band in ohms; null when the primitive carries no steady current while dead.</summary>
    /// <remarks>Junctions and insulation stand in the network as elements that do not conduct; <see cref="StrayPaths"/> says what they may do.</remarks>
    public static (double Low, double Nominal, double High)? Of(CircuitElement element, Part part)
    {
        var given = part.Values.FirstOrDefault(value => value.Element == element.Name)?.Value;
        return element switch
        {
            Resistor resistor => Limits(given ?? resistor.Value),
            Fuse fuse => Limits(given ?? fuse.Value),
            Contact contact => Limits(given ?? contact.Value),
            Unpredictable unpredictable => Limits(given ?? unpredictable.Value),
            Insulation or Diode => (double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity),
            _ => null,
        };
    }

    private static (double Low, double Nominal, double High) Limits(ResistanceBand band) =>
        (band.Low.Ohms, band.Nominal.Ohms, band.High?.Ohms ?? double.PositiveInfinity);
}
