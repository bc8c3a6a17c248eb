using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class CornerRoundingTests
{
    [Fact]
    public void Two_equal_impulses_round_a_corner_as_worked_by_hand()
    {
        // ZV of 50 Hz, undamped: impulses of a half at 0 and 10 ms. Nearest in the middle, 5 ms: each axis a half of v 5 ms + a (5 ms)² / 2 off; at 1 m/s and 0 that is 2.5 mm, times the root of 2.
        var shaper = InputShapers.Of(ShaperKind.ZeroVibration, 50, 0);
        Assert.Equal(Math.Sqrt(2) * 2.5e-3, CornerRounding.Error(shaper, 1, 0), 12);
        Assert.Equal(Math.Sqrt(2) * 0.5 * 10 * 25e-6 / 2, CornerRounding.Error(shaper, 0, 10), 12);
    }

    [Fact]
    public void For_symmetric_shapers_the_rounding_is_a_quarter_of_the_variance_for_each_acceleration()
    {
        // By the centroid: each axis is off by a sigma² / 4 at the mean delay (docs/methods/resonance.md).
        foreach (var kind in Enum.GetValues<ShaperKind>())
        {
            var shaper = InputShapers.Of(kind, 40, 0);
            Assert.Equal(Math.Sqrt(2) * shaper.SpreadSeconds * shaper.SpreadSeconds / 4, CornerRounding.Error(shaper, 0, 1), 12);
        }
    }

    [Fact]
    public void The_highest_acceleration_just_keeps_the_error() => Check.QuickThrowOnFailure(Prop.ForAll(
        Gen.Choose(10, 150).SelectMany(hertz => Gen.Choose(0, 25).SelectMany(damping => Gen.Choose(0, 20).Select(speed => (hertz, damping, speed)))).ToArbitrary(),
        values =>
        {
            foreach (var kind in Enum.GetValues<ShaperKind>())
            {
                var shaper = InputShapers.Of(kind, values.hertz, values.damping / 100.0);
                var acceleration = CornerRounding.HighestAcceleration(shaper, 2e-4, values.speed / 1000.0);
                var error = CornerRounding.Error(shaper, values.speed / 1000.0, acceleration);
                Assert.True(error <= 2e-4 || acceleration == 0);
                Assert.True(acceleration == 0 || error > 2e-4 * (1 - 1e-6));
            }
        }));

    [Fact]
    public void A_simulated_path_passes_the_corner_at_the_distance_that_is_told()
    {
        // By brute force: the shaped path at 40,000 instants, nearest approach to the corner.
        foreach (var kind in Enum.GetValues<ShaperKind>())
        {
            var shaper = InputShapers.Of(kind, 40, 0.1);
            var (speed, acceleration) = (0.01, 3.0);
            var nearest = Enumerable.Range(0, 40_001).Select(step => shaper.DurationSeconds * step / 40_000).Min(time => Math.Sqrt(
                Math.Pow(shaper.Impulses.Sum(impulse => impulse.Share * Way(impulse.Seconds - time, speed, acceleration)), 2)
                + Math.Pow(shaper.Impulses.Sum(impulse => impulse.Share * Way(time - impulse.Seconds, speed, acceleration)), 2)));
            var told = CornerRounding.Error(shaper, speed, acceleration);
            // The place where both axes are equally off is told; the nearest may be a little nearer.
            Assert.InRange(nearest, 0.97 * told, told * (1 + 1e-6));
        }
    }

    private static double Way(double time, double speed, double acceleration) => time <= 0 ? 0 : (speed * time) + (acceleration * time * time / 2);
}
