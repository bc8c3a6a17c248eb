using System.Globalization;

namespace Proveout.Workshop;

/// <summary>Plots of the air in a bay.</summary>
public static class AirPlots
{
    /// <summary>The fans' curve against that of the other openings: within the overlap of both bands the bay settles. Null for a bay without fans, or with fans both ways.</summary>
    public static PlotView? Curves(BayView bay)
    {
        ArgumentNullException.ThrowIfNull(bay);
        if (bay.Curves.FansBlowOut is not { } blowOut)
            return null;
        (double Pascals, double FanLeast, double FanMost, double OtherLeast, double OtherMost)[] points =
            [.. bay.Curves.Points.Select(point => blowOut ? (-point.Pascals, point.OutLeast, point.OutMost, point.InLeast, point.InMost) : (point.Pascals, point.InLeast, point.InMost, point.OutLeast, point.OutMost))];
        return new(
            $"Fans and openings of {bay.Name}",
            string.Create(
                CultureInfo.InvariantCulture,
                $"The filled band is what the fans {(blowOut ? "draw out of" : "blow into")} the bay, the dashed lines the least and the most that passes the other openings, both over the pressure between bay and room. They meet between {Math.Floor(bay.Flow.NewLeast):0} and {Math.Ceiling(bay.Flow.NewMost):0} m³/h."),
            new("flow, m³/h", 0, 1.05 * points.Max(point => point.FanMost)),
            new("pressure, Pa", 0, points.Max(point => point.Pascals)),
            [
                new([.. points.Select(point => (point.FanLeast, point.Pascals)), .. points.Reverse().Select(point => (point.FanMost, point.Pascals))], IsFilled: true),
                new([.. points.Select(point => (point.OtherLeast, point.Pascals))]),
                new([.. points.Select(point => (point.OtherMost, point.Pascals))]),
            ],
            []);
    }

    /// <summary>The hottest air at each part against what it bears; null when no limit is known.</summary>
    public static PlotView? Parts(BayView bay)
    {
        ArgumentNullException.ThrowIfNull(bay);
        if (bay.Parts.Count == 0 || bay.Parts.Any(part => part.HottestCelsius is null))
            return null;
        var most = 10 * Math.Ceiling(bay.Parts.Max(part => Math.Max(part.HottestCelsius!.Value, part.BearsUpTo)) / 10);
        return new(
            $"Air at the parts of {bay.Name} against what they bear",
            $"Each bar runs from the room to the hottest air at a part, counted from below; the dashed upright beside it is what the part bears. {string.Join(" ", bay.Parts.Select((part, at) => $"{at + 1}: {part.Part} at most {AirWords.Hottest(part.HottestCelsius)}, bears {Math.Floor(part.BearsUpTo).ToString("0", CultureInfo.InvariantCulture)} °C."))}",
            new("air at the part, °C", 0, most),
            new("part, by its number", 0, bay.Parts.Count + 1),
            [
                .. bay.Parts.Select((part, at) => new PlotLine(Bar(bay.RoomCelsius, part.HottestCelsius!.Value, at + 1), IsFilled: true)),
                .. bay.Parts.Select((part, at) => new PlotLine([(part.BearsUpTo, at + 0.6), (part.BearsUpTo, at + 1.4)])),
            ],
            []);
    }

    private static (double Across, double Up)[] Bar(double from, double to, double middle) =>
        [(from, middle - 0.2), (to, middle - 0.2), (to, middle + 0.2), (from, middle + 0.2)];
}
