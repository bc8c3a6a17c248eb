using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class SoundRobustnessTests
{
    private static readonly double[] Rates = [2_000, 8_000, 11_025, 44_100, 192_000];

    [Fact]
    public void No_recording_ends_in_an_exception_or_a_figure_that_is_no_number() => Prop.ForAll(Recordings().ToArbitrary(), recording =>
    {
        var outcome = PitchFinder.Find(recording);
        return outcome.Value is { } pitch
            ? double.IsFinite(pitch.FundamentalHertz) && pitch.StandardHertz > 0 && double.IsFinite(pitch.StandardHertz) && pitch.Confidence is >= PitchFinder.LeastConfidence and <= 1
            : outcome.Diagnostics.Count > 0;
    }).Check(Config.QuickThrowOnFailure.WithMaxTest(60));

    [Theory]
    [InlineData(0.01)]
    [InlineData(30)]
    public void Loudness_does_not_move_the_pitch(double factor)
    {
        var recording = new SyntheticPluck(83) { NoiseRatioDecibels = 15 }.Recording();
        var other = recording with { Samples = [.. recording.Samples.Select(sample => factor * sample)] };
        Assert.Equal(PitchFinder.Find(recording).Value!.FundamentalHertz, PitchFinder.Find(other).Value!.FundamentalHertz, 9);
    }

    [Fact]
    public void Where_the_microphone_is_offset_does_not_move_the_pitch()
    {
        var recording = new SyntheticPluck(83) { NoiseRatioDecibels = 15 }.Recording();
        var other = recording with { Samples = [.. recording.Samples.Select(sample => sample + 0.3)] };
        Assert.Equal(PitchFinder.Find(recording).Value!.FundamentalHertz, PitchFinder.Find(other).Value!.FundamentalHertz, 6);
    }

    private static Gen<Recording> Recordings() =>
        from rate in Gen.Elements(Rates)
        from seconds in Gen.Choose(25, 120)
        from kind in Gen.Choose(0, 6)
        from seed in Gen.Choose(0, 100_000)
        select new Recording("made.wav", Samples(kind, (int)(rate * seconds / 100), rate, seed), rate, new SampleForm(16, false, 1), []);

    private static double[] Samples(int kind, int count, double rate, int seed)
    {
        var random = new Random(seed);
        var at = random.Next(count);
        return [.. Enumerable.Range(0, count).Select(index => kind switch
        {
            0 => 0,
            1 => index == at ? 1 : 0,
            2 => random.NextDouble() - 0.5,
            3 => index < at ? 0 : Math.Exp(-(index - at) / (0.1 * rate)) * Math.Sign(Math.Sin(2 * Math.PI * seed % 500 * index / rate)),
            4 => index < at ? -1 : 1,
            5 => 1e-12 * random.NextDouble(),
            _ => Math.Sin(index * (double)index / count) * (index % 4000 < 2000 ? 1 : 0.01),
        })];
    }
}
