namespace Proveout.Engine.Electrical;

/// <summary>What a person who touches a node and stands on earth would feel.</summary>
internal static class BodyCurrent
{
    /// <summary>Resistance of a person, in ohms: the network of IEC 60990 figure 3 at mains frequency, 1500 and 500 ohm.</summary>
    public const double Ohms = 2000;

    /// <summary>Touch current from which it counts, in amperes: 0.5 mA, IEC 61140 clause 5.1.6.</summary>
    public const double LeastAmperes = 0.0005;

    // Below this voltage no more than the least current could flow.
    private const double LeastVolts = Ohms * LeastAmperes;

    // A touch so far below the least current answers for all of the same metal that stands at this share of its voltage or less: what metal has of
    // resistance is nothing beside that of a person.
    private const double ClearlyBelow = 0.9;
    private const double SameVolts = 1.01;

    /// <summary>True when the current through a person would count; a source of high impedance gives way.</summary>
    public static bool IsFelt(LiveLook look, int node, double volts, out double amperes)
    {
        amperes = volts / Ohms;
        var metal = look.Machine.MetalOf(node);
        if (volts < LeastVolts || (look.Unfelt.TryGetValue(metal, out var unfelt) && volts <= unfelt * SameVolts))
            return false;
        var touched = look.Machine.SolveWith(look.State, new Join(node, -1, Ohms, Ohms));
        var first = touched.AtFirst ?? touched;
        amperes = Math.Max(first.AcVolts(node).Magnitude, look.Last.Trips.Count > 0 ? 0 : touched.AcVolts(node).Magnitude) / Ohms;
        if (amperes < ClearlyBelow * LeastAmperes)
            look.Unfelt[metal] = volts;
        return amperes > LeastAmperes;
    }
}
