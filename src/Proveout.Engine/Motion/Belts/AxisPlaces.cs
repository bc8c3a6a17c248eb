using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Where each axis stands, in the order of the design's axes, in millimetres.</summary>
public static class AxisPlaces
{
    /// <summary>Every axis in the middle of its travel.</summary>
    public static ValueList<double> Middle(MotionDesign motion) => [.. Between(motion, 0.5)];

    /// <summary>Places spread evenly over the travel of the axes that count, the others in the middle; ends included.</summary>
    /// <param name="motion">The design.</param>
    /// <param name="counts">Which axes count.</param>
    /// <param name="each">How many places an axis, at least 2.</param>
    public static IEnumerable<ValueList<double>> Over(MotionDesign motion, Func<string, bool> counts, int each)
    {
        ArgumentNullException.ThrowIfNull(motion);
        IEnumerable<double[]> places = [[]];
        foreach (var axis in motion.Axes)
        {
            double[] stops = counts(axis.Name) ? [.. Enumerable.Range(0, each).Select(stop => At(axis, (double)stop / (each - 1)))] : [At(axis, 0.5)];
            places = places.SelectMany(place => stops.Select(stop => (double[])[.. place, stop]));
        }

        return places.Select(place => place.ToValueList());
    }

    /// <summary>The axes that a belt's points ride on.</summary>
    public static IReadOnlySet<string> RiddenBy(MotionDesign motion, Belt belt)
    {
        ArgumentNullException.ThrowIfNull(belt);
        return belt.Path
            .Select(point => BeltPlaces.Of(motion, point.At))
            .SelectMany(place => place.Across.Shares.Concat(place.Up.Shares))
            .Select(share => share.Axis)
            .ToHashSet(StringComparer.Ordinal);
    }

    private static IEnumerable<double> Between(MotionDesign motion, double share) => motion.Axes.Select(axis => At(axis, share));

    private static double At(Axis axis, double share) => axis.Low.Millimeters + (share * (axis.High - axis.Low).Millimeters);
}
