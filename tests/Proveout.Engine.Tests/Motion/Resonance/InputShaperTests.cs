using MathNet.Numerics.OdeSolvers;
using MathNet.Numerics.LinearAlgebra;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class InputShaperTests
{
    public static TheoryData<ShaperKind, double> KindsAndDampings
    {
        get
        {
            var data = new TheoryData<ShaperKind, double>();
            foreach (var kind in Enum.GetValues<ShaperKind>())
                foreach (var damping in new[] { 0, 0.01, 0.05, 0.1, 0.2, 0.3 })
                    data.Add(kind, damping);
            return data;
        }
    }

    // Shares and times for 1 Hz: closed forms of Singer and Seering 1990 and Singhose et al. 1994, computed with numpy (shared reference values, 7.5).
    [Theory]
    [InlineData(ShaperKind.ZeroVibration, 0, "0.5 0.5", "0 0.5")]
    [InlineData(ShaperKind.ZeroVibrationDerivative, 0, "0.25 0.5 0.25", "0 0.5 1")]
    [InlineData(ShaperKind.ExtraInsensitive, 0, "0.2625 0.475 0.2625", "0 0.5 1")]
    [InlineData(ShaperKind.ZeroVibration, 0.05, "0.53923824 0.46076176", "0 0.50062617")]
    [InlineData(ShaperKind.ZeroVibrationDerivative, 0.05, "0.29077788 0.49692072 0.21230140", "0 0.50062617 1.00125235")]
    [InlineData(ShaperKind.ZeroVibration, 0.1, "0.57828618 0.42171382", "0 0.50251891")]
    [InlineData(ShaperKind.ZeroVibrationDerivative, 0.1, "0.33441491 0.48774255 0.17784254", "0 0.50251891 1.00503782")]
    [InlineData(ShaperKind.ExtraInsensitive, 0.1, "0.354726 0.453400 0.191875", "0 0.507213 1.005038")]
    public void Impulses_are_those_of_the_literature(ShaperKind kind, double damping, string shares, string times)
    {
        var impulses = InputShapers.Of(kind, 1, damping).Impulses;
        var digits = damping > 0 && kind == ShaperKind.ExtraInsensitive ? 6 : 8;
        Assert.Equal(Numbers(shares, digits), impulses.Select(impulse => Math.Round(impulse.Share, digits)));
        Assert.Equal(Numbers(times, digits), impulses.Select(impulse => Math.Round(impulse.Seconds, digits)));
    }

    // The same table: residual at 0.9 and 1.1 times the design frequency.
    [Theory]
    [InlineData(ShaperKind.ZeroVibration, 0, 0.156434, 0.156434)]
    [InlineData(ShaperKind.ZeroVibrationDerivative, 0, 0.024472, 0.024472)]
    [InlineData(ShaperKind.ZeroVibration, 0.05, 0.145480, 0.143209)]
    [InlineData(ShaperKind.ZeroVibrationDerivative, 0.05, 0.021164, 0.020509)]
    [InlineData(ShaperKind.ZeroVibration, 0.1, 0.134722, 0.130534)]
    [InlineData(ShaperKind.ZeroVibrationDerivative, 0.1, 0.018150, 0.017039)]
    public void Residuals_off_the_design_are_those_of_the_literature(ShaperKind kind, double damping, double below, double above)
    {
        var shaper = InputShapers.Of(kind, 40, damping);
        Assert.Equal(below, shaper.Residual(36, damping), 6);
        Assert.Equal(above, shaper.Residual(44, damping), 6);
    }

    [Theory]
    [MemberData(nameof(KindsAndDampings))]
    public void Shares_are_positive_and_make_one(ShaperKind kind, double damping)
    {
        var shaper = InputShapers.Of(kind, 37, damping);
        Assert.Equal(1, shaper.Impulses.Sum(impulse => impulse.Share), 12);
        Assert.All(shaper.Impulses, impulse => Assert.True(impulse.Share > 0));
        Assert.Equal(shaper.Impulses.OrderBy(impulse => impulse.Seconds), shaper.Impulses);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.03)]
    [InlineData(0.1)]
    [InlineData(0.3)]
    public void Zeros_at_the_design_are_as_many_as_the_name_says(double damping)
    {
        // The sum over the impulses in the complex plane, and its derivatives by s, at the pole of the mode.
        var pole = new System.Numerics.Complex(-damping, Math.Sqrt(1 - (damping * damping))) * 2 * Math.PI * 50;
        foreach (var (kind, zeros) in new[] { (ShaperKind.ZeroVibration, 1), (ShaperKind.ZeroVibrationDerivative, 2), (ShaperKind.ZeroVibrationSecondDerivative, 3) })
            for (var order = 0; order <= zeros; order++)
            {
                var sum = InputShapers.Of(kind, 50, damping).Impulses.Aggregate(
                    System.Numerics.Complex.Zero, (total, impulse) => total + (impulse.Share * Math.Pow(100 * impulse.Seconds, order) * System.Numerics.Complex.Exp(-pole * impulse.Seconds)));
                Assert.Equal(order < zeros, sum.Magnitude < 1e-12);
            }
    }

    [Theory]
    [InlineData(0, 0.05)]
    [InlineData(0.1, 0.05)]
    [InlineData(0.2, 0.1)]
    public void Extra_insensitive_leaves_its_tolerance_at_the_design_and_nothing_on_both_sides(double damping, double tolerance)
    {
        var shaper = InputShapers.Of(ShaperKind.ExtraInsensitive, 1, damping, tolerance);
        Assert.Equal(tolerance, shaper.Residual(1, damping), 9);
        Assert.True(Sweep(0.6, 1).Min(hertz => shaper.Residual(hertz, damping)) < 1e-4);
        Assert.True(Sweep(1, 1.4).Min(hertz => shaper.Residual(hertz, damping)) < 1e-4);
    }

    [Fact]
    public void There_is_a_shaper_for_every_damping_and_tolerance_that_may_be_asked()
    {
        foreach (var damping in Enumerable.Range(0, 31).Select(step => step / 100.0))
            foreach (var tolerance in new[] { 0.005, 0.01, 0.03, 0.05, 0.1, 0.2, 0.25 })
                foreach (var shaper in InputShapers.All(1, damping, tolerance))
                {
                    Assert.Equal(1, shaper.Impulses.Sum(impulse => impulse.Share), 9);
                    Assert.All(shaper.Impulses, impulse => Assert.InRange(impulse.Share, 0, 1));
                    Assert.True(shaper.Residual(1, damping) <= tolerance + 1e-9);
                }
    }

    // 5 % insensitivity without damping: ZV 0.06369, ZVD 0.28713, EI 0.39945 (shared reference values, 7.5); two-hump 0.73, three-hump 0.96 (Singhose, Derezinski and Singer 1996, from memory).
    [Theory]
    [InlineData(ShaperKind.ZeroVibration, 0.06369, 2e-5)]
    [InlineData(ShaperKind.ZeroVibrationDerivative, 0.28713, 2e-5)]
    [InlineData(ShaperKind.ExtraInsensitive, 0.39945, 2e-5)]
    [InlineData(ShaperKind.TwoHump, 0.73, 0.01)]
    [InlineData(ShaperKind.ThreeHump, 0.96, 0.01)]
    public void Bands_within_the_tolerance_are_as_wide_as_the_literature_says(ShaperKind kind, double width, double within)
    {
        var shaper = InputShapers.Of(kind, 1, 0);
        var (low, high) = (1.0, 1.0);
        while (shaper.Residual(low, 0) <= 0.05 + 1e-9)
            low -= 1e-5;
        while (shaper.Residual(high, 0) <= 0.05 + 1e-9)
            high += 1e-5;
        Assert.Equal(width, high - low, within);
    }

    [Theory]
    [InlineData(ShaperKind.TwoHump, 2)]
    [InlineData(ShaperKind.ThreeHump, 3)]
    public void Humps_reach_the_tolerance_and_no_further(ShaperKind kind, int humps)
    {
        foreach (var tolerance in new[] { 0.02, 0.05, 0.1 })
        {
            var shaper = InputShapers.Of(kind, 1, 0, tolerance);
            double[] residuals = [.. Sweep(0.5, 1.5).Select(hertz => shaper.Residual(hertz, 0))];
            int[] tops = [.. Enumerable.Range(1, residuals.Length - 2).Where(index => residuals[index] > residuals[index - 1] && residuals[index] >= residuals[index + 1])];
            Assert.Equal(humps, tops.Length);
            Assert.All(tops, top => Assert.Equal(tolerance, residuals[top], 1e-4));
        }
    }

    [Theory]
    [InlineData(ShaperKind.TwoHump)]
    [InlineData(ShaperKind.ThreeHump)]
    public void With_damping_the_humps_stay_near_the_tolerance(ShaperKind kind)
    {
        // Our approximation: docs/methods/resonance.md states by how much the humps may pass the tolerance.
        foreach (var damping in new[] { 0.02, 0.05, 0.1, 0.15 })
        {
            var shaper = InputShapers.Of(kind, 1, damping);
            Assert.InRange(Sweep(0.75, 1.25).Max(hertz => shaper.Residual(hertz, damping)), 0.01, 0.07);
            Assert.True(shaper.Residual(1, damping) <= 0.05 + 1e-12);
        }
    }

    [Theory]
    [MemberData(nameof(KindsAndDampings))]
    public void A_simulated_oscillator_is_left_with_the_residual_that_is_told(ShaperKind kind, double damping)
    {
        // MathNet.Numerics 5.0.0, Runge-Kutta of fourth order: steps of force at the times of the impulses; amplitude after the last against that after one whole step at the start.
        var shaper = InputShapers.Of(kind, 1, damping);
        foreach (var hertz in new[] { 0.8, 1, 1.15 })
        {
            var left = Amplitude(shaper.Impulses, shaper.DurationSeconds, hertz, damping);
            var alone = Amplitude([new(1, 0)], 0, hertz, damping);
            Assert.Equal(shaper.Residual(hertz, damping), left / alone, 5e-5);
        }
    }

    // The state just after the last step, as a vector about the place of rest: its length in the plane of position and scaled speed.
    private static double Amplitude(IReadOnlyList<ShaperImpulse> impulses, double end, double hertz, double damping)
    {
        var turn = 2 * Math.PI * hertz;
        var state = Vector<double>.Build.Dense(2);
        foreach (var (index, impulse) in impulses.Index())
        {
            // A step of the place of rest, seen from the new one.
            state[0] -= impulse.Share;
            var until = index + 1 < impulses.Count ? impulses[index + 1].Seconds : end;
            if (until > impulse.Seconds)
                state = RungeKutta.FourthOrder(state, impulse.Seconds, until, 1000, (_, at) => Vector<double>.Build.Dense([at[1], -(turn * turn * at[0]) - (2 * damping * turn * at[1])]))[^1];
        }

        var damped = turn * Math.Sqrt(1 - (damping * damping));
        var other = (state[1] + (damping * turn * state[0])) / damped;
        return Math.Sqrt((state[0] * state[0]) + (other * other));
    }

    private static IEnumerable<double> Sweep(double from, double to) => Enumerable.Range(0, 20_001).Select(step => from + ((to - from) * step / 20_000));

    private static IEnumerable<double> Numbers(string text, int digits) => text.Split(' ').Select(number => Math.Round(double.Parse(number, System.Globalization.CultureInfo.InvariantCulture), digits));
}
