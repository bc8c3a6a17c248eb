namespace Proveout.Engine.Electrical;

/// <summary>The limits of an insulation resistance in the machine as designed.</summary>
internal static class InsulationBounds
{
    /// <summary>Limits in ohms between line and neutral, joined together, and the protective contact; infinite when over range.</summary>
    /// <remarks>
    /// From below, the sum of all insulation that touches what stands at 500 V, or what is joined to the protective contact, laid straight across.
    /// From above the machine may be open: nothing bounds insulation there.
    /// </remarks>
    public static (double LowOhms, double HighOhms) Of(StateNetwork state, int line, int neutral, int earth)
    {
        var (low, high) = (state.Low.Network, state.High.Network);
        var ofLine = low.Islands.Of(line);
        var ofNeutral = low.Islands.Of(neutral);
        var leakage = state.Strays.LeakageOf(ofLine) + (ofLine == ofNeutral ? 0 : state.Strays.LeakageOf(ofNeutral));
        var across = 1 / Math.Min(leakage, state.Strays.LeakageOf(low.Islands.Of(earth)));
        return (
            low.Islands.Of(earth) == ofLine || low.Islands.Of(earth) == ofNeutral ? 0 : across,
            Math.Min(high.Resistance(line, earth), high.Resistance(neutral, earth)));
    }
}
