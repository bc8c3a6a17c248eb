using Proveout.Engine.Numerics;

namespace Proveout.Engine.Heat;

/// <summary>Flow and temperature of the air in a bay, by the balance of heat: what is given off leaves with the air or through the walls.</summary>
/// <remarks>
/// Air inside counts as mixed, as warm as the air that leaves; what single parts have around them beyond that is an allowance of each part. The warmest runs with the least flow, the least density
/// and the least loss, the coolest with the most; both balances rise with temperature, so each has one root.
/// </remarks>
/// <param name="bay">The bay.</param>
public sealed class BayClimate(BayAir bay)
{
    // Buoyancy and thin air are counted for this rise; the run is made again for the larger one when it comes to more.
    private static readonly double[] CountedRises = [60, 1000];

    private readonly Lazy<Between> _rest = new(() => new(Coolest(bay, bay.RestWatts.Low), Warmest(bay, bay.RestWatts.High)));
    private readonly Lazy<double> _work = new(() => Warmest(bay.InUse, bay.WorkWatts));

    /// <summary>The bay.</summary>
    public BayAir Bay => bay;

    /// <summary>What flows through it in the cool: the operating points of its fans.</summary>
    public AirFlows Flows { get; } = FlowsAt(bay, bay.RoomCelsius.High, 10);

    /// <summary>The same with filters at any time until they are to be changed.</summary>
    public AirFlows FlowsInUse { get; } = FlowsAt(bay.InUse, bay.RoomCelsius.High, 10);

    /// <summary>The same once all is warm, at rest.</summary>
    public AirFlows FlowsSoaked => FlowsAt(bay, bay.RoomCelsius.High, Math.Min(RestRise.High, CountedRises[^1]));

    /// <summary>By how much the air that leaves is warmer than the room once all is warm, at rest, with new filters, in K.</summary>
    public Between RestRise => _rest.Value;

    /// <summary>The same at most, with everything at work and filters that are to be changed.</summary>
    public double WorkRise => _work.Value;

    /// <summary>Warmest air in the bay in °C, with everything at work in the hottest room.</summary>
    public double HottestCelsius => bay.RoomCelsius.High + WorkRise;

    /// <summary>Warmest air at a part in °C.</summary>
    public double HottestAt(BayPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return HottestCelsius + part.AboveAirKelvin;
    }

    private static double Warmest(BayAir bay, double watts)
    {
        var room = bay.RoomCelsius.High;
        var rise = 0.0;
        foreach (var counted in CountedRises)
        {
            var flow = FlowsAt(bay, room + counted, counted).LeastThrough;
            var carried = flow * DryAir.JoulesPerKilogramKelvin.Low * (1 - bay.Returned.High);
            rise = RiseOf(above => (carried * DryAir.DensityAt(room + above, bay.AltitudeMetres) * above) + bay.Walls.LeastWatts(room + above, room), watts);
            if (rise <= counted)
                return rise;
        }

        return rise;
    }

    private static double Coolest(BayAir bay, double watts)
    {
        var room = bay.RoomCelsius.Low;
        var density = DryAir.DensityAt(room, bay.AltitudeMetres);
        return RiseOf(
            rise => (FlowsAt(bay, room, rise).MostThrough * density * DryAir.JoulesPerKilogramKelvin.High * (1 - bay.Returned.Low) * rise) + bay.Walls.MostWatts(room + rise, room),
            watts);
    }

    // Nothing carries heat away from a bay without openings whose walls are not known: infinitely warm.
    private static double RiseOf(Func<double, double> lost, double watts) =>
        watts <= 0 ? 0 : lost(CountedRises[^1]) < watts ? double.PositiveInfinity : RisingRoot.Of(rise => lost(Math.Max(0, rise)) - watts, 0, 1);

    private static AirFlows FlowsAt(BayAir bay, double celsius, double rise)
    {
        var density = DryAir.DensityAt(celsius, bay.AltitudeMetres);
        var buoyancy = density * FreeConvection.Gravity * bay.Walls.HeightMetres * rise / Kelvin.Of(bay.RoomCelsius.Low);
        return new(bay.Openings, density, buoyancy);
    }
}
