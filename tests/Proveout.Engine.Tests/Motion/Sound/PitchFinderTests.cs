using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

/// <summary>Synthetic plucks whose fundamental is known: what is claimed lies within its expanded uncertainty, and what cannot be told is not claimed.</summary>
public sealed class PitchFinderTests
{
    private const int Seeds = 20;

    public static TheoryData<string, int> Rooms => new()
    {
        // Situation, and how many of the plucks may be left untold.
        { "quiet", 0 },
        { "noise 20 dB below", 0 },
        { "noise 10 dB below", 0 },
        { "noise 3 dB below", 2 },
        { "stiff span", 0 },
        { "very stiff span", 0 },
        { "fundamental missing", 0 },
        { "fundamental weak, span stiff", 0 },
        { "hum at a third", 4 },
        { "voice at a third", 5 },
        { "voice as loud", 18 },
        { "rings shortly", 2 },
        { "three strokes", 1 },
        { "8 kHz", 1 },
    };

    [Theory]
    [MemberData(nameof(Rooms))]
    public void What_is_claimed_of_a_pluck_lies_within_its_expanded_uncertainty(string room, int mayBeUntold)
    {
        var untold = 0;
        for (var seed = 0; seed < Seeds; seed++)
        {
            var pluck = In(room, seed);
            if (PitchFinder.Find(pluck.Recording()).Value is not { } pitch)
            {
                untold++;
                continue;
            }

            Assert.True(
                Math.Abs(pitch.FundamentalHertz - pluck.FundamentalHertz) <= pitch.ExpandedHertz,
                $"{room}, seed {seed}: {pluck.FundamentalHertz} Hz read as {pitch.FundamentalHertz} ± {pitch.ExpandedHertz}");
        }

        Assert.InRange(untold, 0, mayBeUntold);
    }

    [Fact]
    public void A_quiet_pluck_is_read_within_half_a_percent() =>
        Assert.All(Enumerable.Range(0, Seeds), seed => Assert.InRange(Pitch(In("quiet", seed)) is var pitch ? pitch.ExpandedHertz / pitch.FundamentalHertz : 1, 0, 0.005));

    [Fact]
    public void A_voice_alone_is_no_pluck() => Assert.All(Enumerable.Range(0, Seeds), seed =>
        Assert.Null(PitchFinder.Find((In("quiet", seed) with { VoiceShare = 1000 }).Recording()).Value));

    [Fact]
    public void Noise_alone_is_no_pluck() => Assert.All(Enumerable.Range(0, Seeds), seed =>
        Assert.Null(PitchFinder.Find((In("quiet", seed) with { NoiseRatioDecibels = -60 }).Recording()).Value));

    [Fact]
    public void A_steady_hum_is_no_pluck()
    {
        double[] samples = [.. Enumerable.Range(0, 66_150).Select(index => 0.5 * Math.Sin(2 * Math.PI * 100 * index / 44_100.0))];
        Assert.Null(PitchFinder.Find(new Recording("hum.wav", samples, 44_100, new SampleForm(64, true, 1), [])).Value);
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(0.01)]
    [InlineData(0.0439)]
    public void The_stiffness_of_a_span_is_read_from_its_partials(double inharmonicity)
    {
        var pitch = Pitch(new SyntheticPluck(90) { Inharmonicity = inharmonicity, NoiseRatioDecibels = 30 });
        Assert.InRange(Math.Abs(pitch.Inharmonicity - inharmonicity), 0, 3 * pitch.StandardInharmonicity);
        Assert.InRange(pitch.StandardInharmonicity, 0, 0.002 + (0.05 * inharmonicity));
    }

    [Fact]
    public void Several_strokes_of_one_span_are_counted_and_sharpen_the_figure()
    {
        var once = Pitch(new SyntheticPluck(110) { NoiseRatioDecibels = 10, DecaySeconds = 0.1, Strokes = [0.2], Seconds = 2 });
        var thrice = Pitch(new SyntheticPluck(110) { NoiseRatioDecibels = 10, DecaySeconds = 0.1, Strokes = [0.2, 0.8, 1.4], Seconds = 2 });
        Assert.Equal(3, thrice.PluckCount);
        Assert.True(thrice.StandardHertz < once.StandardHertz);
    }

    [Fact]
    public void Two_spans_in_one_recording_are_refused_with_both_notes()
    {
        var (first, second) = (new SyntheticPluck(96) { Strokes = [0.2] }.Samples(), new SyntheticPluck(112) { Strokes = [0.9] }.Samples());
        var both = new Recording("two.wav", [.. first.Zip(second, (one, other) => one + other)], 44_100, new SampleForm(64, true, 1), []);
        var refusal = Assert.Single(PitchFinder.Find(both).Diagnostics);
        Assert.Equal("several-notes", refusal.Rule);
        Assert.Contains("96.0", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("112.0", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_told_is_refused_with_what_to_do()
    {
        var refusal = Assert.Single(PitchFinder.Find((new SyntheticPluck(110) { NoiseRatioDecibels = -40 }).Recording()).Diagnostics);
        Assert.Equal("made.wav", refusal.Place.File);
        Assert.Contains("Pluck again", refusal.Mend, StringComparison.Ordinal);
    }

    private static PluckedPitch Pitch(SyntheticPluck pluck) => Assert.IsType<PluckedPitch>(PitchFinder.Find(pluck.Recording()).Value);

    private static SyntheticPluck In(string room, int seed)
    {
        var random = new Random(1000 + seed);
        var pluck = new SyntheticPluck(20 * Math.Pow(20, random.NextDouble()))
        {
            Seed = seed,
            DecaySeconds = 0.12 + (0.4 * random.NextDouble()),
            PluckPlace = 0.1 + (0.4 * random.NextDouble()),
            Strokes = [0.2 + (0.3 * random.NextDouble())],
        };
        return room switch
        {
            "quiet" => pluck,
            "noise 20 dB below" => pluck with { NoiseRatioDecibels = 20 },
            "noise 10 dB below" => pluck with { NoiseRatioDecibels = 10 },
            "noise 3 dB below" => pluck with { NoiseRatioDecibels = 3 },
            "stiff span" => pluck with { NoiseRatioDecibels = 20, Inharmonicity = 0.01 },
            "very stiff span" => pluck with { NoiseRatioDecibels = 20, Inharmonicity = 0.0439 },
            "fundamental missing" => pluck with { NoiseRatioDecibels = 20, FundamentalShare = 0 },
            "fundamental weak, span stiff" => pluck with { NoiseRatioDecibels = 20, FundamentalShare = 0.1, Inharmonicity = 0.003 },
            "hum at a third" => pluck with { NoiseRatioDecibels = 20, HumShare = 0.3 },
            "voice at a third" => pluck with { NoiseRatioDecibels = 30, VoiceShare = 0.3 },
            "voice as loud" => pluck with { NoiseRatioDecibels = 30, VoiceShare = 1 },
            "rings shortly" => pluck with { NoiseRatioDecibels = 20, DecaySeconds = 0.08 },
            "three strokes" => pluck with { NoiseRatioDecibels = 20, Seconds = 2.2, Strokes = [0.2, 0.9, 1.5] },
            "8 kHz" => pluck with { NoiseRatioDecibels = 20, Rate = 8000 },
            _ => throw new ArgumentOutOfRangeException(nameof(room)),
        };
    }
}
