using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class WavReaderTests
{
    private static readonly double[] Tone = [.. Enumerable.Range(0, 22_050).Select(index => 0.6 * Math.Sin(0.02 * index))];

    [Theory]
    [InlineData(8, false)]
    [InlineData(16, false)]
    [InlineData(24, false)]
    [InlineData(32, false)]
    [InlineData(32, true)]
    [InlineData(64, true)]
    public void Samples_of_every_size_come_back_within_one_step(int bits, bool isFloat)
    {
        var recording = Read(new WavFile([Tone]) { Bits = bits, IsFloat = isFloat });
        var step = isFloat ? 1e-7 : Math.ScaleB(1, 1 - bits);
        Assert.Equal(44_100, recording.RateHertz);
        Assert.Equal(Tone.Length, recording.Samples.Count);
        Assert.All(recording.Samples.Zip(Tone), pair => Assert.InRange(pair.First - pair.Second, -step, step));
    }

    [Fact]
    public void The_extensible_head_says_the_same_as_the_short_one() =>
        Assert.Equal(Read(new WavFile([Tone]) { Bits = 24 }).Samples, Read(new WavFile([Tone]) { Bits = 24, IsExtensible = true }).Samples);

    [Fact]
    public void Chunks_that_are_not_known_are_passed_over() =>
        Assert.Equal(Read(new WavFile([Tone])).Samples, Read(new WavFile([Tone]) { HasNote = true }).Samples);

    [Fact]
    public void Two_channels_are_mixed_down()
    {
        var recording = Read(new WavFile([Tone, [.. Tone.Select(_ => 0.2)]]) { Bits = 32, IsFloat = true });
        Assert.Equal((Tone[777] + 0.2) / 2, recording.Samples[777], 6);
    }

    [Fact]
    public void Channels_of_opposite_sign_do_not_cancel()
    {
        var recording = Read(new WavFile([Tone, [.. Tone.Select(sample => -sample)]]));
        Assert.InRange(recording.Samples.Max(), 0.59, 0.61);
    }

    [Theory]
    [InlineData(0u)]
    [InlineData(uint.MaxValue)]
    public void A_length_that_the_recorder_left_open_is_read_to_the_end(uint claimed)
    {
        var recording = Read(new WavFile([Tone]) { ClaimedLength = claimed });
        Assert.Equal(Tone.Length, recording.Samples.Count);
        Assert.NotEmpty(recording.Notes);
    }

    public static TheoryData<string, byte[]> Bad => new()
    {
        { "empty-recording", [] },
        { "not-a-wav", [.. "ID3 some compressed sound that is long enough"u8] },
        { "not-a-wav", [.. "RIFX....WAVEfmt "u8] },
        { "no-format", [.. "RIFF....WAVE"u8] },
        { "no-format", [.. "RIFF....WAVEdata\0\0\0\0"u8] },
        { "truncated-recording", new WavFile([Tone]).Bytes()[..40] },
        { "truncated-recording", new WavFile([Tone]).Bytes()[..20_000] },
        { "compressed-recording", new WavFile([Tone]) { Tag = 2 }.Bytes() },
        { "compressed-recording", new WavFile([Tone]) { Tag = 85, IsExtensible = true }.Bytes() },
        { "unknown-sample-form", new WavFile([Tone]) { Bits = 16, IsFloat = true }.Bytes() },
        { "unknown-sample-form", new WavFile([.. Enumerable.Repeat(Tone, 17)]).Bytes() },
        { "unusable-rate", new WavFile([Tone], 400).Bytes() },
        { "unusable-rate", new WavFile([Tone], 0).Bytes() },
        { "short-recording", new WavFile([Tone[..4_410]]).Bytes() },
        { "long-recording", new WavFile([new double[130_000]], 2_000).Bytes() },
        { "silent-recording", new WavFile([new double[22_050]]).Bytes() },
        { "silent-recording", new WavFile([[.. Tone.Select(sample => 0.1 + (1e-5 * sample))]]).Bytes() },
        { "clipped-recording", new WavFile([[.. Tone.Select(sample => 20 * sample)]]).Bytes() },
        { "clipped-recording", new WavFile([[.. Tone.Select(sample => Math.Clamp(20 * sample, -1, 1))]]) { Bits = 32, IsFloat = true }.Bytes() },
        { "no-numbers", new WavFile([[.. Tone.Select(sample => sample > 0.59 ? double.NaN : sample)]]) { Bits = 32, IsFloat = true }.Bytes() },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void What_cannot_be_used_is_refused_with_what_to_do(string rule, byte[] bytes)
    {
        var refusal = Assert.Single(WavReader.Read(bytes, "left.wav").Diagnostics);
        Assert.Equal(rule, refusal.Rule);
        Assert.Equal("left.wav", refusal.Place.File);
        Assert.EndsWith(".", refusal.Message, StringComparison.Ordinal);
        Assert.EndsWith(".", refusal.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Slight_clipping_is_noted_and_does_not_stop_the_work()
    {
        var clipped = Tone.ToArray();
        Array.Fill(clipped, 1, 1000, 10);
        Assert.Contains("clipped", Assert.Single(Read(new WavFile([clipped])).Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Floating_point_beyond_one_is_no_clipping() =>
        Assert.Empty(Read(new WavFile([[.. Tone.Select(sample => 40 * sample)]]) { Bits = 32, IsFloat = true }).Notes);

    [Fact]
    public void No_bytes_end_in_an_exception() => Prop.ForAll<byte[], int>((noise, cut) =>
    {
        var file = new WavFile([Tone[..12_000]]).Bytes();
        for (var index = 0; index < noise.Length; index++)
            file[(index * 7) % 60] ^= noise[index];
        var outcome = WavReader.Read(file.AsSpan(0, Math.Abs(cut % file.Length)), "x.wav");
        return outcome.Value is not null || outcome.Diagnostics.Count > 0;
    }).QuickCheckThrowOnFailure();

    private static Recording Read(WavFile file) => Assert.IsType<Recording>(WavReader.Read(file.Bytes(), "x.wav").Value);
}
