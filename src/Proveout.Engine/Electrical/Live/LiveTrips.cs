using System.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Which protective device interrupts first.</summary>
internal static class LiveTrips
{
    /// <summary>What the trip of a residual-current device is called.</summary>
    public const string ResidualName = "residual current";

    /// <summary>The first to interrupt, with the branches that it opens; null when none has to.</summary>
    public static (Trip Trip, int[] Branches)? Next(ChangedCircuit changed, LivePoint point)
    {
        (Trip Trip, int[] Branches)? first = null;
        foreach (var (trip, branches) in Fuses(changed, point).Concat(Residual(changed, point)))
            if (first is null || trip.Seconds < first.Value.Trip.Seconds)
                first = (trip, branches);
        return first;
    }

    private static IEnumerable<(Trip Trip, int[] Branches)> Fuses(ChangedCircuit changed, LivePoint point)
    {
        foreach (var branch in changed.Circuit.Protective)
        {
            if (point.Tripped[branch.Index] || branch.RatedAmperes is not { } rated)
                continue;
            var direct = LiveBalance.DcAmperes(branch, changed.Siemens[branch.Index], point);
            var alternating = LiveBalance.AcAmperes(branch, changed.Siemens[branch.Index], point, changed.Circuit.RadiansPerSecond).Magnitude;
            var amperes = Math.Sqrt((direct * direct) + (alternating * alternating));
            var seconds = TripCurves.SecondsAt(branch.Curve, amperes / rated);
            if (!double.IsPositiveInfinity(seconds))
                yield return (new(branch.Subject, branch.Name, amperes, rated, seconds, false), [branch.Index]);
        }
    }

    private static IEnumerable<(Trip Trip, int[] Branches)> Residual(ChangedCircuit changed, LivePoint point)
    {
        foreach (var device in changed.Circuit.ResidualTrips)
        {
            if (device.Branches.Any(branch => point.Tripped[branch]))
                continue;
            var amperes = ResidualAmperes(device, changed, point);
            var seconds = TripCurves.ResidualSecondsAt(amperes / device.RatedAmperes);
            if (!double.IsPositiveInfinity(seconds))
                yield return (new(device.Part, ResidualName, amperes, device.RatedAmperes, seconds, true), device.Branches);
        }
    }

    /// <summary>What the currents that a residual-current device watches lack to add up to nothing.</summary>
    public static double ResidualAmperes(LiveResidualTrip device, ChangedCircuit changed, LivePoint point) =>
        device.Branches.Aggregate(Complex.Zero, (total, branch) => total + LiveBalance.AcAmperes(
            changed.Circuit.Branches[branch], changed.Siemens[branch], point, changed.Circuit.RadiansPerSecond)).Magnitude;
}
