namespace Proveout.Engine.Electrical;

/// <summary>The limits of an insulation resistance in the machine as designed.</summary>
internal static class InsulationBounds
{
    /// <summary>Limits in ohms between line and neutral, joined together, and the protective contact; infinite when over range.</summary>
    /// <remarks>
    /// From below, the sum of all insulation that touches what stands at 500 V, or what is joined to the protective contact, laid straight across.
    /// From above the machine may be open: nothing bounds insulation there.
    /// </remarks>
    public static (double LowOhms, double HighOhms) Of(IStateReadings state, int line, int neutral, int earth)
    {
        var (ofLine, ofNeutral, ofEarth) = (state.PieceOf(line), state.PieceOf(neutral), state.PieceOf(earth));
        var leakage = state.Strays.LeakageOf(ofLine) + (ofLine == ofNeutral ? 0 : state.Strays.LeakageOf(ofNeutral));
        return (
            ofEarth == ofLine || ofEarth == ofNeutral ? 0 : 1 / Math.Min(leakage, state.Strays.LeakageOf(ofEarth)),
            Math.Min(state.HighOhms(line, earth), state.HighOhms(neutral, earth)));
    }
}
