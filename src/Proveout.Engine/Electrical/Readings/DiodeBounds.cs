using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Limits of a diode test that need no solution of the network, and so hold under a fault as they do in the sound machine.</summary>
/// <remarks>
/// From below: either no junction conducts and the volts are those of resistance and insulation, or the port holds what a junction near it
/// holds, or, between two pieces, what the way with the lowest forward voltages holds. From above: the network with junctions open, and the
/// best single way from red to black.
/// </remarks>
internal sealed class DiodeBounds(WiringNetwork wiring, StateNetwork state, DiodeTestMode mode)
{
    private readonly PathVolts _paths = new(wiring, state, mode);

    /// <summary>Limits of the volts in the machine as designed; infinite when over range.</summary>
    public (double LowVolts, double HighVolts) Volts(int red, int black)
    {
        var islands = state.Low.Network.Islands;
        return Of(
            mode,
            state.Low.Network.Resistance(red, black),
            state.High.Network.Resistance(red, black),
            state.Strays,
            (islands.Of(red), islands.Of(black)),
            _paths.Best(red, black).Volts);
    }

    /// <summary>What the meter may show.</summary>
    public ReadingInterval Shown(int red, int black)
    {
        var (low, high) = Volts(red, black);
        return mode.Shown(low, high);
    }

    /// <summary>Limits from what resistances, junctions and insulation leave.</summary>
    /// <param name="mode">The meter.</param>
    /// <param name="lowOhms">What the resistances alone leave, all at their low limit.</param>
    /// <param name="highOhms">The same at their high limit.</param>
    /// <param name="strays">Junctions and insulation.</param>
    /// <param name="pieces">The pieces that the red and the black lead are on.</param>
    /// <param name="wayVolts">The most volts along the best single way.</param>
    public static (double LowVolts, double HighVolts) Of(
        DiodeTestMode mode, double lowOhms, double highOhms, StrayPieces strays, (int Red, int Black) pieces, double wayVolts)
    {
        var least = strays.LeastVolts(lowOhms, pieces.Red, pieces.Black, mode.LeastAmperes);
        return (least, Math.Max(least, Math.Min(highOhms * mode.MostAmperes, wayVolts)));
    }
}
