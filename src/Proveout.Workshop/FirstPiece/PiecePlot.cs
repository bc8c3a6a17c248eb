namespace Proveout.Workshop;

/// <summary>How far each length is from the drawn one, before and after.</summary>
internal static class PiecePlot
{
    private const double LeastMm = 0.05;
    private const double HalfBar = 0.25;

    public static PlotView? Of(IReadOnlyList<PieceLengthView> lengths)
    {
        if (lengths.Count < 2)
            return null;
        var most = Math.Max(LeastMm, 1.1 * lengths.Max(length => Math.Max(Math.Abs(length.ReadMm - length.DrawnMm), Math.Abs(length.After.Value - length.DrawnMm) + length.After.Expanded)));
        var worst = lengths.MaxBy(length => Math.Abs(length.ReadMm - length.DrawnMm))!;
        return new(
            "Lengths against the drawing",
            $"Broken lines: as read, less as drawn; filled: where each is expected after the steps. Furthest off is measure {worst.Number}, by {Engine.Motion.SensibleDigits.Of(worst.ReadMm - worst.DrawnMm, 2)} mm.",
            new("Number of the measure", lengths.Min(length => length.Number) - 0.5, lengths.Max(length => length.Number) + 0.5),
            new("mm", -most, most),
            [new([(lengths.Min(length => length.Number) - 0.5, 0), (lengths.Max(length => length.Number) + 0.5, 0)]), .. lengths.Select(Expected), .. lengths.Select(Read)],
            []);
    }

    private static PlotLine Read(PieceLengthView length) => new([(length.Number, 0), (length.Number, length.ReadMm - length.DrawnMm)]);

    private static PlotLine Expected(PieceLengthView length)
    {
        var (low, high) = (length.After.Value - length.After.Expanded - length.DrawnMm, length.After.Value + length.After.Expanded - length.DrawnMm);
        return new([(length.Number - HalfBar, low), (length.Number + HalfBar, low), (length.Number + HalfBar, high), (length.Number - HalfBar, high)], IsFilled: true);
    }
}
