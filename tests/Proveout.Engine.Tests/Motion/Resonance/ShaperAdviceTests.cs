using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class ShaperAdviceTests
{
    private static readonly ShaperDemand Demand = new(0.05, 1e-4, 0, 5, 200, 0);

    [Fact]
    public void A_frequency_that_is_surely_known_needs_only_the_shortest_shaper()
    {
        var advice = ShaperAdvice.For([Mode(50, 0.05, 0.02, 0.0005)], Flat(), Demand);
        Assert.Equal(ShaperKind.ZeroVibration, advice.Best!.Shaper.Kind);
        Assert.True(advice.MeetsTolerance);
        Assert.Equal(50, advice.Best.Shaper.Hertz);
    }

    [Theory]
    [InlineData(3, ShaperKind.ZeroVibrationDerivative)]
    [InlineData(8, ShaperKind.ExtraInsensitive)]
    [InlineData(14, ShaperKind.TwoHump)]
    [InlineData(21, ShaperKind.ThreeHump)]
    public void The_less_the_frequency_is_known_the_longer_the_shaper(double expanded, ShaperKind kind)
    {
        // Half of the 5 % insensitivity of each kind, undamped: 14, 20, 36, 48 % of the frequency (shared reference values, 7.5).
        var advice = ShaperAdvice.For([Mode(50, 0.0005, expanded / 2, 0)], Flat(), Demand);
        Assert.Equal(kind, advice.Best!.Shaper.Kind);
        Assert.True(advice.MeetsTolerance);
    }

    [Fact]
    public void A_resonance_that_wanders_is_covered_as_one_that_is_not_known()
    {
        var still = ShaperAdvice.For([Mode(50, 0.05, 4, 0.002)], Flat(), Demand);
        var wandering = ShaperAdvice.For([Mode(50, 0.05, 0, 0.002)], Flat(), Demand with { Wander = 8.0 / 50 });
        Assert.Equal(still.Judgements.Select(judgement => Math.Round(judgement.Residual, 9)), wandering.Judgements.Select(judgement => Math.Round(judgement.Residual, 9)));
    }

    [Fact]
    public void When_none_keeps_the_tolerance_the_one_that_leaves_least_is_named()
    {
        var advice = ShaperAdvice.For([Mode(50, 0.0005, 20, 0)], Flat(), Demand);
        Assert.False(advice.MeetsTolerance);
        Assert.Equal(advice.Judgements.Min(judgement => judgement.Residual), advice.Best!.Residual);
    }

    [Fact]
    public void Two_resonances_are_shaped_together_between_them()
    {
        var advice = ShaperAdvice.For([Mode(40, 0.05, 0.1, 0.002), Mode(52, 0.05, 0.1, 0.002)], Flat(), Demand);
        Assert.Equal(2, advice.Modes.Count);
        Assert.InRange(advice.Best!.Shaper.Hertz, 40, 52);
        Assert.All(advice.Modes, mode => Assert.InRange(advice.Best.Shaper.Residual(mode.Hertz.Value, 0.05), 0, 0.1));
    }

    [Fact]
    public void A_resonance_that_hardly_travels_is_not_shaped_for()
    {
        var advice = ShaperAdvice.For([Mode(40, 0.05, 0.1, 0.002), Mode(180, 0.05, 0.1, 0.002) with { Height = new(0.01, 0.001) }], Flat(), Demand);
        Assert.Single(advice.Modes);
        Assert.Equal(40, advice.Best!.Shaper.Hertz);
    }

    [Fact]
    public void Without_a_damping_the_usual_band_is_covered()
    {
        var advice = ShaperAdvice.For([Mode(50, 0.05, 0.1, 0.002) with { DampingRatio = null }], Flat(), Demand);
        Assert.True(advice.IsDampingAssumed);
        foreach (var damping in new[] { 0.02, 0.085, 0.15 })
            Assert.True(advice.Best!.Shaper.Residual(50, damping) <= advice.Best.Residual + 1e-12);
    }

    [Fact]
    public void Without_a_resonance_there_is_nothing_to_shape() => Assert.Null(ShaperAdvice.For([], Flat(), Demand).Best);

    [Fact]
    public void What_is_left_of_a_measured_spectrum_is_that_of_the_shaped_samples()
    {
        // Impulses that fall on samples: 50 Hz undamped ZV at 1 kHz is the mean of a sample and the one ten before it; by the same average of the shaped samples.
        var random = new Random(3);
        double[] samples = [.. Enumerable.Range(0, 60_000).Select(_ => SyntheticShake.Gauss(random))];
        double[] shaped = [.. samples.Skip(10).Zip(samples, (now, before) => (now + before) / 2)];
        var (plain, after) = (Density(samples), Density(shaped));
        var advice = ShaperAdvice.For([Mode(50, 1e-9, 0.01, 0)], plain, Demand);
        var share = advice.Judgements.First(judgement => judgement.Shaper.Kind == ShaperKind.ZeroVibration).SpectrumShare;
        Assert.Equal(Math.Sqrt(after.MeanSquare(5, 200) / plain.MeanSquare(5, 200)), share, 0.005);
    }

    private static PowerDensity Density(double[] samples)
    {
        var average = new WelchAverage(1024);
        average.Add(samples);
        return average.Result(1000, 1);
    }

    private static VibrationMode Mode(double hertz, double damping, double hertzStandard, double dampingStandard) =>
        new(new(hertz, hertzStandard), new Uncertain(damping, dampingStandard), "", new(1, 0.05), 20, 0);

    private static PowerDensity Flat() => new(0.5, [.. Enumerable.Repeat(1.0, 401)], [.. Enumerable.Repeat(1.0, 401)], 50);
}
