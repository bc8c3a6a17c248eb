using Proveout.Engine.Numerics;

namespace Proveout.Engine.Heat;

/// <summary>What flows through a bay: the pressure in it at which as much comes in as goes out.</summary>
/// <remarks>
/// One pressure joins all ways, so fans side by side and one behind another, helping and opposing, need no rule of their own. Inflow falls and outflow rises with that pressure; raised each
/// for itself, their crossing rises. So two runs, all ways at their most and all at their least, bound the flow through the bay; exactly, where no way may turn round within its tolerances.
/// The air's own buoyancy, at most that of its whole height, is counted for the most flow and against the least.
/// </remarks>
/// <param name="openings">The ways.</param>
/// <param name="density">Density of the air in kg/m³.</param>
/// <param name="buoyancyPascals">Most pressure between top and bottom that warm air makes by itself.</param>
public sealed class AirFlows(IReadOnlyList<AirOpening> openings, double density, double buoyancyPascals)
{
    private const double FirstPascals = 4;

    private readonly Lazy<Between> _pressure = new(() => openings.Count == 0 ? new(0, 0) : new(
        RisingRoot.Of(pressure => -openings.Sum(opening => opening.LeastInward(-pressure - buoyancyPascals, density)), 0, FirstPascals),
        RisingRoot.Of(pressure => -openings.Sum(opening => opening.MostInward(-pressure, density)), 0, FirstPascals)));

    private readonly Lazy<double> _least = new(() => openings.Count == 0 ? 0 : Crossing(
        pressure => openings.Sum(opening => Math.Max(0, opening.LeastInward(-pressure - buoyancyPascals, density))),
        pressure => openings.Sum(opening => Math.Max(0, -opening.MostInward(-pressure, density)))).Least);

    private readonly Lazy<double> _most = new(() => openings.Count == 0 ? 0 : Crossing(
        pressure => openings.Sum(opening => Math.Max(0, opening.MostInward(-pressure, density))),
        pressure => openings.Sum(opening => Math.Max(0, -opening.LeastInward(-pressure - buoyancyPascals, density)))).Most);

    /// <summary>Pressure in the bay above that of the room, in Pa.</summary>
    public Between BayPascals => _pressure.Value;

    /// <summary>Least flow through the bay in m³/s: what comes in, and goes out.</summary>
    public double LeastThrough => _least.Value;

    /// <summary>Most flow through the bay in m³/s.</summary>
    public double MostThrough => _most.Value;

    /// <summary>Flow through the bay in m³/s.</summary>
    public Between Through => new(LeastThrough, MostThrough);

    /// <summary>Flow into the bay through one of its openings in m³/s; negative when air leaves there.</summary>
    public Between Into(AirOpening opening)
    {
        ArgumentNullException.ThrowIfNull(opening);
        var (least, most) = EndsOf(opening);
        var (low, high) = (Math.Max(least, -MostThrough), Math.Min(most, MostThrough));
        // Where it is the only one that can bring air in, or let it out, all of the flow passes it.
        var others = openings.Where(other => !ReferenceEquals(other, opening)).Select(EndsOf).ToArray();
        if (others.All(other => other.Most <= 0))
            low = Math.Max(low, LeastThrough);
        if (others.All(other => other.Least >= 0))
            high = Math.Min(high, -LeastThrough);
        return new(low, Math.Max(low, high));
    }

    private (double Least, double Most) EndsOf(AirOpening opening) => (opening.LeastInward(-BayPascals.High - buoyancyPascals, density), opening.MostInward(-BayPascals.Low, density));

    /// <summary>What comes in with a pressure in the bay above the room's, in m³/s: falling as it rises.</summary>
    public Between ComesIn(double pascals) => new(
        openings.Sum(opening => Math.Max(0, opening.LeastInward(-pascals - buoyancyPascals, density))),
        openings.Sum(opening => Math.Max(0, opening.MostInward(-pascals, density))));

    /// <summary>What goes out with a pressure in the bay above the room's, in m³/s: rising with it.</summary>
    public Between GoesOut(double pascals) => new(
        openings.Sum(opening => Math.Max(0, -opening.MostInward(-pascals, density))),
        openings.Sum(opening => Math.Max(0, -opening.LeastInward(-pascals - buoyancyPascals, density))));

    // Where rising outflow meets falling inflow; both are the same there but for the last digits, or where both are nothing.
    private static (double Least, double Most) Crossing(Func<double, double> inflow, Func<double, double> outflow)
    {
        var pressure = RisingRoot.Of(at => outflow(at) - inflow(at), 0, FirstPascals);
        var (comes, goes) = (inflow(pressure), outflow(pressure));
        return (Math.Min(comes, goes), Math.Max(comes, goes));
    }
}
