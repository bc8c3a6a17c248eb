using System.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Which protective device interrupts first.</summary>
internal static class LiveTrips
{
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
            var sum = device.Branches.Aggregate(Complex.Zero, (total, branch) => total + LiveBalance.AcAmperes(
                changed.Circuit.Branches[branch], changed.Siemens[branch], point, changed.Circuit.RadiansPerSecond));
            var seconds = TripCurves.ResidualSecondsAt(sum.Magnitude / device.RatedAmperes);
            if (!double.IsPositiveInfinity(seconds))
                yield return (new(device.Part, "residual current", sum.Magnitude, device.RatedAmperes, seconds, true), device.Branches);
        }
    }
}
