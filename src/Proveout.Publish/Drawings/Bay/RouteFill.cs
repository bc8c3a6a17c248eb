using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>A stretch of a route and how full it is.</summary>
/// <param name="FromMm">Where on the centre line it begins.</param>
/// <param name="ToMm">Where it ends.</param>
/// <param name="Share">Room that its conductors take, of its inside.</param>
internal sealed record RouteFill(double FromMm, double ToMm, double Share)
{
    // Hook-up wire with PVC insulation by cross-section, in mm over the insulation: middle of what makers list, common practice.
    private static readonly (double SquareMillimetres, double Millimetres)[] HookUp =
        [(0.08, 0.9), (0.14, 1.15), (0.22, 1.25), (0.34, 1.45), (0.5, 1.85), (0.75, 2.25), (1.0, 2.45), (1.5, 2.85), (2.5, 3.4), (4, 4.0), (6, 4.6), (10, 6.0)];

    /// <summary>The stretches of a route between the places where conductors come and go, none shorter than a length; a joined stretch shows its fullest.</summary>
    public static IReadOnlyList<RouteFill> Of(MachineLayout layout, Route route, double leastMm)
    {
        if (route.Inside is not { } inside)
            return [];
        var legs = layout.Ways.SelectMany(way => way.Legs.Where(leg => leg.Route == route.Name)
            .Select(leg => (From: Math.Min(leg.FromMm, leg.ToMm), To: Math.Max(leg.FromMm, leg.ToMm), Square: Math.Pow(DiameterOf(way.Conductor), 2)))).ToList();
        var room = inside.Width.Millimeters * inside.Height.Millimeters;
        var stations = legs.SelectMany(leg => new[] { leg.From, leg.To }).Distinct().Order().ToList();
        var stretches = new List<RouteFill>();
        foreach (var (from, to) in stations.Zip(stations.Skip(1)))
        {
            // Each conductor takes the square that it fits in.
            var share = legs.Where(leg => leg.From <= from && to <= leg.To).Sum(leg => leg.Square) / room;
            if (stretches.Count > 0 && stretches[^1].ToMm - stretches[^1].FromMm < leastMm)
                stretches[^1] = stretches[^1] with { ToMm = to, Share = Math.Max(stretches[^1].Share, share) };
            else
                stretches.Add(new(from, to, share));
        }

        return stretches;
    }

    private static double DiameterOf(Conductor conductor)
    {
        var section = conductor.CrossSection.SquareMillimeters;
        foreach (var (square, diameter) in HookUp)
            if (section <= square)
                return diameter;
        return HookUp[^1].Millimetres * Math.Sqrt(section / HookUp[^1].SquareMillimetres);
    }
}
