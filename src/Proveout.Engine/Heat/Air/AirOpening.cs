using Proveout.Engine.Numerics;

namespace Proveout.Engine.Heat;

/// <summary>A way of air between the room and a bay: a hole with what the air must pass, and perhaps a fan.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="SquareMetres">Its free area.</param>
/// <param name="Coefficient">Pressure lost over the dynamic pressure of the mean speed in the free area.</param>
public sealed record AirOpening(string Name, Between SquareMetres, Between Coefficient)
{
    // A fan that stands takes this share of its most pressure at its most flow: loss coefficients of 2 to 15 on its frame; from memory.
    private static readonly Between StandingShare = new(0.3, 2);

    /// <summary>Its filter; null when it has none.</summary>
    public AirFilter? Filter { get; init; }

    /// <summary>Its fan; null when it has none.</summary>
    public OpeningFan? Fan { get; init; }

    /// <summary>Most flow into the bay in m³/s that any values allow; negative when air leaves.</summary>
    /// <param name="drive">Pressure of the room less that of the bay, in Pa.</param>
    /// <param name="density">Density of the air in kg/m³.</param>
    public double MostInward(double drive, double density) => Math.Max(Flow(drive, density, helps: true, loose: true), Flow(drive, density, helps: true, loose: false));

    /// <summary>Least flow into the bay in m³/s that any values allow; negative when air leaves.</summary>
    public double LeastInward(double drive, double density) => Math.Min(Flow(drive, density, helps: false, loose: true), Flow(drive, density, helps: false, loose: false));

    /// <summary>Mean speed in m/s in the free area, by the least and the most of a flow of zero or above.</summary>
    public Between SpeedOf(Between flow) => new(flow.Low / SquareMetres.High, flow.High / SquareMetres.Low);

    /// <summary>The flow with every quantity at one of its ends.</summary>
    /// <param name="drive">Pressure of the room less that of the bay, in Pa.</param>
    /// <param name="density">Density of the air in kg/m³.</param>
    /// <param name="helps">True for the speed of the fan that brings more air in.</param>
    /// <param name="loose">True for the least that the air must pass.</param>
    internal double Flow(double drive, double density, bool helps, bool loose)
    {
        var still = density / 2 * (loose ? Coefficient.Low / (SquareMetres.High * SquareMetres.High) : Coefficient.High / (SquareMetres.Low * SquareMetres.Low));
        if (Fan is { Stands: true } standing)
            still += density / DryAir.StandardDensity * standing.Curve.MostPascals / (standing.Curve.MostFlow * standing.Curve.MostFlow) * (loose ? StandingShare.Low : StandingShare.High);
        if (Fan is not { Stands: false } fan)
            return Filter is null ? Math.Sign(drive) * Math.Sqrt(Math.Abs(drive) / still) : RisingRoot.Of(flow => Loss(flow, still, loose) - drive, 0, Math.Sqrt((Math.Abs(drive) / still) + 1e-12));
        var share = density / DryAir.StandardDensity;
        // A fan is strongest at its highest speed wherever its flow is below twice its most: farther no opening drives it.
        var curve = fan.Curve.AtSpeed(helps != fan.BlowsOut ? fan.Speed.High : fan.Speed.Low);
        var sign = fan.BlowsOut ? -1 : 1;
        return RisingRoot.Of(flow => Loss(flow, still, loose) - (sign * share * curve.PascalsAt(sign * flow)) - drive, 0, curve.MostFlow / 4);
    }

    private double Loss(double flow, double still, bool loose)
    {
        var size = Math.Abs(flow);
        var filter = Filter is null ? 0 : loose ? Filter.LeastPascalsAt(size) : Filter.MostPascalsAt(size);
        return Math.Sign(flow) * ((still * size * size) + filter);
    }
}
