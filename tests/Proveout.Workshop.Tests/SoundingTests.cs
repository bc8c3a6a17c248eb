using System.Buffers.Binary;

namespace Proveout.Workshop.Tests;

public sealed class SoundingTests
{
    [Fact]
    public void A_recording_with_length_and_mass_gives_note_force_and_plots()
    {
        var view = Of([Pluck(110)], ("span", "150"), ("mass", "8.4"));
        var belt = Assert.Single(view.Belts);
        Assert.InRange(belt.Note.Frequency.Value, 109.8, 110.2);
        // T = 4 m L² f² = 9.148 N (shared reference values, 5.1).
        Assert.InRange(belt.Force!.Value, 9.148 - belt.Force.Expanded, 9.148 + belt.Force.Expanded);
        Assert.Equal(2, belt.Plots.Count);
        Assert.All(belt.Plots, plot => Assert.NotEmpty(plot.Description));
        Assert.True(view.IsFine);
    }

    [Fact]
    public void A_pair_is_compared_without_length_or_mass()
    {
        var view = Of([Pluck(112), Pluck(96)]);
        Assert.Equal("left-tighter", view.Pair!.Verdict);
        Assert.InRange(view.Pair.DifferencePercent.Value, 30, 31.2);
        Assert.Contains("equally long", view.Pair.Sentence, StringComparison.Ordinal);
        Assert.False(view.IsFine);
    }

    [Fact]
    public void A_recording_and_a_typed_note_make_a_pair() =>
        Assert.Equal("equal", Of([Pluck(110)], ("other-frequency", "110.5"), ("frequency-error", "0,2")).Pair!.Verdict);

    [Theory]
    [InlineData("9.148", "0.1", "right")]
    [InlineData("14", "0.1", "too-loose")]
    [InlineData("6", "0.1", "too-tight")]
    [InlineData("9.148", "2", "cannot-tell")]
    public void A_force_is_held_against_its_target(string target, string massError, string verdict) =>
        Assert.Equal(verdict, Assert.Single(Of([], ("frequency", "110"), ("frequency-error", "0.1"), ("span", "150"), ("span-error", "0.2"), ("mass", "8.4"), ("mass-error", massError), ("target", target)).Target).Verdict);

    [Fact]
    public void The_screw_is_turned_less_than_computed_so_that_it_does_not_overshoot()
    {
        // 9.148 N to 14 N at 10 N for each turn (E A 10 kN, 1 m, two runs, 0.5 mm) is 0.485 turns; three eighths are told.
        var view = Of([], ("frequency", "110"), ("span", "150"), ("mass", "8.4"), ("target", "14"), ("belt-stiffness", "10000"), ("belt-length", "1000"), ("screw-pitch", "0.5"));
        Assert.Contains("by 0.375 turns", Assert.Single(view.Turns), StringComparison.Ordinal);
    }

    [Fact]
    public void A_trial_turn_is_enough_when_no_stiffness_is_known()
    {
        // 100 Hz to 110 Hz in half a turn is 7.56 to 9.148 N, 3.18 N for each turn; 14 N needs 1.53 turns more.
        var view = Of([], ("frequency", "110"), ("span", "150"), ("mass", "8.4"), ("mass-error", "0.02"), ("span-error", "0.2"), ("target", "14"), ("trial-frequency", "100"), ("trial-turns", "0.5"));
        Assert.Contains("Tighten the screw of the span by 1.5 turns", Assert.Single(view.Turns), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no-note")]
    [InlineData("not-a-figure", "frequency", "110", "span", "long")]
    [InlineData("out-of-range", "frequency", "110", "span", "-3")]
    [InlineData("not-whole", "frequency", "110", "runs", "1.5")]
    [InlineData("target-without-span", "frequency", "110", "target", "10")]
    [InlineData("trial-without-turns", "frequency", "110", "trial-frequency", "100")]
    [InlineData("missing-figure", "frequency", "110", "screw-pitch", "0.5", "belt-length", "1000")]
    public void What_is_wrong_is_said(string rule, params string[] typed) =>
        Assert.Contains(
            Sounding.Of(new SoundingRequest([], typed.Chunk(2).ToDictionary(pair => pair[0], pair => pair[1]))).Diagnostics,
            diagnostic => diagnostic.Rule == rule && diagnostic.Mend.Length > 0);

    [Fact]
    public void A_file_that_is_no_recording_is_refused_by_its_content_whatever_its_name() =>
        Assert.Equal("not-a-wav", Assert.Single(Sounding.Of(new SoundingRequest([new SoundFile("belt.wav", [.. "%PDF-1.7 and more"u8])], new Dictionary<string, string>())).Diagnostics).Rule);

    [Fact]
    public void A_file_that_is_too_large_is_not_read() =>
        Assert.Equal("large-recording", Assert.Single(Sounding.Of(new SoundingRequest([new SoundFile("belt.wav", new byte[SoundFile.MostBytes + 1])], new Dictionary<string, string>())).Diagnostics).Rule);

    private static SoundingView Of(SoundFile[] recordings, params (string Field, string Text)[] typed)
    {
        var answer = Sounding.Of(new SoundingRequest(recordings, typed.ToDictionary(item => item.Field, item => item.Text)));
        Assert.Empty(answer.Diagnostics);
        return answer.Value!;
    }

    /// <summary>A second of a limp string with three partials, 16 bits.</summary>
    internal static SoundFile Pluck(double hertz)
    {
        const int Rate = 22_050;
        var bytes = new byte[44 + (2 * (Rate * 5 / 4))];
        "RIFF"u8.CopyTo(bytes);
        "WAVEfmt "u8.CopyTo(bytes.AsSpan(8));
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(4), bytes.Length - 8);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(16), 16);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(20), 0x0001_0001);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(24), Rate);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(28), 2 * Rate);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(32), 0x0010_0002);
        "data"u8.CopyTo(bytes.AsSpan(36));
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(40), bytes.Length - 44);
        for (var index = 0; 44 + (2 * index) < bytes.Length; index++)
        {
            var time = (index / (double)Rate) - 0.3;
            var sample = time < 0 ? 0 : Enumerable.Range(1, 3).Sum(number => 0.4 / number * Math.Exp(-time * (3 + number)) * Math.Sin(2 * Math.PI * number * hertz * time));
            BinaryPrimitives.WriteInt16LittleEndian(bytes.AsSpan(44 + (2 * index)), (short)(32_000 * sample));
        }

        return new SoundFile($"{hertz}.wav", bytes);
    }
}
