using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class ModeFinderTests
{
    [Theory]
    [InlineData(47, 0.06)]
    [InlineData(32, 0.1)]
    [InlineData(90, 0.02)]
    [InlineData(60, 0.15)]
    public void Under_noise_frequency_and_damping_lie_within_their_uncertainty(double hertz, double damping)
    {
        var (right, all) = (0, 0);
        for (var seed = 0; seed < 10; seed++)
        {
            var modes = Modes(new SyntheticShake(1600, 60, (hertz, damping, 1)) { Seed = seed }.UnderNoise(), 1600, Excitation.Force);
            var mode = modes[0];
            Assert.InRange(mode.Hertz.Value, 0.97 * hertz, 1.03 * hertz);
            Assert.InRange(mode.DampingRatio!.Value.Relative, 0, 0.2);
            all += 2;
            right += Math.Abs(mode.Hertz.Value - hertz) <= mode.Hertz.Expanded ? 1 : 0;
            right += Math.Abs(mode.DampingRatio.Value.Value - damping) <= mode.DampingRatio.Value.Expanded ? 1 : 0;
        }

        // Expanded uncertainties hold in about 95 of 100.
        Assert.InRange(right, 0.8 * all, all);
    }

    [Fact]
    public void Two_resonances_are_both_found()
    {
        var modes = Modes(new SyntheticShake(1600, 60, (42, 0.05, 1), (71, 0.04, 0.6)).UnderNoise(), 1600, Excitation.Force);
        Assert.Equal(2, modes.Count);
        foreach (var (hertz, mode) in new[] { 42.0, 71 }.Zip(modes.OrderBy(mode => mode.Hertz.Value)))
        {
            Assert.Equal(hertz, mode.Hertz.Value, mode.Hertz.Expanded);
            Assert.InRange(mode.Hertz.Relative, 0, 0.01);
        }
    }

    [Theory]
    [InlineData(47, 0.06)]
    [InlineData(25, 0.1)]
    [InlineData(110, 0.01)]
    [InlineData(60, 0.003)]
    public void After_blows_the_decrement_gives_frequency_and_damping(double hertz, double damping)
    {
        var mode = Modes(new SyntheticShake(1600, 12, (hertz, damping, 5)).UnderBlows(1, 3.5, 6, 8.5), 1600, Excitation.Force)[0];
        Assert.True(mode.Blows > 0);
        Assert.Equal(hertz, mode.Hertz.Value, Math.Max(mode.Hertz.Expanded, 1e-3 * hertz));
        Assert.Equal(damping, mode.DampingRatio!.Value.Value, Math.Max(mode.DampingRatio.Value.Expanded, 0.01 * damping));
        Assert.InRange(mode.DampingRatio.Value.Relative, 0, 0.15);
    }

    [Fact]
    public void A_pure_ringing_has_the_logarithmic_decrement_of_its_tops()
    {
        // delta = ln(x0 / x1) = 2 pi zeta / sqrt(1 - zeta²): ratio 0.5 a turn is zeta 0.109653 (shared reference values, 7.5).
        var damping = Math.Log(2) / Math.Sqrt((4 * Math.PI * Math.PI) + Math.Pow(Math.Log(2), 2));
        Assert.Equal(0.109653, damping, 6);
        var ringing = Enumerable.Range(0, 2000).Select(index => index / 2000.0).Select(time => Math.Pow(0.5, time * 40) * Math.Sin(2 * Math.PI * 40 * time)).ToArray();
        var heard = RingDown.Of(new Ring(0, [], ringing), 2000, 40)!;
        Assert.Equal(damping, heard.DampingRatio.Value, 0.0005);
        Assert.Equal(40 / Math.Sqrt(1 - (damping * damping)), heard.Hertz.Value, 0.05);
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(2, false)]
    [InlineData(0, true)]
    public void A_sweep_by_the_drive_gives_the_transfer(int kept, bool byOctaves)
    {
        // The carriage on a spring whose end the drive moves: MathNet.Numerics 5.0.0, Runge-Kutta of fourth order.
        var samples = SweptShake.Samples(1000, 60, 55, 0.06, kept, byOctaves);
        var record = SyntheticShake.Read(SyntheticShake.Table(samples, 1000));
        var density = SweepKind.Keeping(kept, byOctaves).Transfer(record.Directions[0].Spectrum, 55);
        var mode = ModeFinder.Find(record, record.Directions[0], density, Excitation.Drive, 15, 150)[0];
        Assert.Equal(55, mode.Hertz.Value, Math.Max(mode.Hertz.Expanded, 0.3));
        Assert.Equal(0.06, mode.DampingRatio!.Value.Value, Math.Max(mode.DampingRatio.Value.Expanded, 0.004));
        Assert.InRange(mode.DampingRatio.Value.Relative, 0, 0.3);
    }

    [Fact]
    public void A_peak_no_wider_than_the_window_has_a_frequency_and_no_damping()
    {
        // 60 Hz with a damping ratio of 0.0008 is 0.1 Hz wide; a bin is 0.39 Hz.
        var mode = Modes(new SyntheticShake(1600, 40, (60, 0.0008, 1)).UnderNoise(), 1600, Excitation.Force)[0];
        Assert.Equal(60, mode.Hertz.Value, 0.2);
        Assert.Null(mode.DampingRatio);
        Assert.Contains("no wider than the analysis shows", mode.Doubt, StringComparison.Ordinal);
    }

    [Fact]
    public void The_window_does_not_widen_a_narrow_peak()
    {
        // Half-power width 1.2 Hz, about the window's own: read off the curve it would be half as wide again.
        var samples = new SyntheticShake(1600, 300, (60, 0.01, 1)).UnderNoise();
        var record = SyntheticShake.Read(SyntheticShake.Table(samples, 1600), new SignalOptions(SegmentLength: 2048));
        var mode = ModeFinder.Find(record, record.Directions[0], record.Directions[0].Spectrum, Excitation.Force, 10, 200)[0];
        Assert.Equal(0.01, mode.DampingRatio!.Value.Value, Math.Max(0.0015, mode.DampingRatio.Value.Expanded));
        var peak = PeakSearch.In(record.Directions[0].Spectrum, 10, 200)[0];
        Assert.True(ResonanceFit.HalfPowerBins(record.Directions[0].Spectrum, peak) * record.Directions[0].Spectrum.BinHertz / 120 > 0.012);
    }

    [Fact]
    public void White_noise_has_no_resonance()
    {
        for (var seed = 0; seed < 10; seed++)
        {
            var random = new Random(seed);
            Assert.Empty(Modes([.. Enumerable.Range(0, 30_000).Select(_ => SyntheticShake.Gauss(random))], 1000, Excitation.NotTold));
        }
    }

    [Fact]
    public void When_nobody_told_how_it_was_excited_the_uncertainty_covers_both()
    {
        var samples = new SyntheticShake(1600, 60, (40, 0.12, 1)).UnderNoise();
        var untold = Modes(samples, 1600, Excitation.NotTold)[0];
        Assert.Equal(40, untold.Hertz.Value, untold.Hertz.Expanded);
        Assert.Equal(0.12, untold.DampingRatio!.Value.Value, untold.DampingRatio.Value.Expanded);
        Assert.InRange(untold.Hertz.Relative, 1e-4, 0.02);
    }

    [Fact]
    public void Changes_between_two_recordings_are_told_apart_from_noise()
    {
        VibrationMode[] Of(int seed, params (double, double, double)[] modes) => [.. Modes(new SyntheticShake(1600, 60, modes) { Seed = seed }.UnderNoise(), 1600, Excitation.Force)];
        var before = Of(1, (42, 0.05, 1), (80, 0.04, 0.8));
        var same = ModeChange.Between(before, Of(2, (42, 0.05, 1), (80, 0.04, 0.8)));
        var moved = ModeChange.Between(before, Of(3, (47, 0.05, 1), (120, 0.04, 0.8)));

        Assert.All(same, change => Assert.True(Math.Abs(change.Rise!.Value.Value) <= 1.5 * change.Rise.Value.Expanded));
        Assert.All(same, change => Assert.True(Math.Abs(change.Growth!.Value.Value - 1) <= 1.5 * change.Growth.Value.Expanded));
        Assert.Equal(5, moved[0].Rise!.Value.Value, 0.5);
        Assert.True(moved[0].Rise!.Value.Value > moved[0].Rise!.Value.Expanded);
        Assert.Null(moved[1].After);
        Assert.Equal(80, moved[1].Before!.Hertz.Value, 1.0);
        Assert.Null(moved[2].Before);
        Assert.Equal(120, moved[2].After!.Hertz.Value, 1.0);
    }

    private static IReadOnlyList<VibrationMode> Modes(double[] samples, double rate, Excitation excitation)
    {
        var record = SyntheticShake.Read(SyntheticShake.Table(samples, rate));
        return ModeFinder.Find(record, record.Directions[0], record.Directions[0].Spectrum, excitation, 10, 200);
    }
}
