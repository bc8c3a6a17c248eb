namespace Proveout.Workshop;

/// <summary>How far each length is from the drawn one, before and after.</summary>
internal static class PiecePlot
{
    private const double LeastMm = 0.05;

    public static PlotView? Of(IReadOnlyList<PieceLengthView> lengths)
    {
        if (lengths.Count < 2)
            return null;
        var most = Math.Max(LeastMm, 1.1 * lengths.Max(length => Math.Max(Math.Abs(length.ReadMm - length.DrawnMm), Math.Abs(length.After.Value - length.DrawnMm) + length.After.Expanded)));
        PlotLine Line(Func<PieceLengthView, double> of) => new([.. lengths.Select(length => ((double)length.Number, of(length) - length.DrawnMm))]);
        var worst = lengths.MaxBy(length => Math.Abs(length.ReadMm - length.DrawnMm))!;
        return new(
            "Lengths against the drawing",
            $"Solid: as read, less as drawn; broken: what is expected after the steps, with its doubt above and below. Furthest off is measure {worst.Number}, by {Engine.Motion.SensibleDigits.Of(worst.ReadMm - worst.DrawnMm, 2)} mm.",
            new("Number of the measure", lengths.Min(length => length.Number) - 0.5, lengths.Max(length => length.Number) + 0.5),
            new("mm", -most, most),
            [Line(length => length.ReadMm), Line(length => length.After.Value), Line(length => length.After.Value + length.After.Expanded), Line(length => length.After.Value - length.After.Expanded)],
            []);
    }
}
