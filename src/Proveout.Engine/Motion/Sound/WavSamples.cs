using System.Buffers.Binary;

namespace Proveout.Engine.Motion;

/// <summary>Turns the bytes of samples into numbers.</summary>
internal static class WavSamples
{
    // Channels of opposite sign cancel; below this share of the louder channel the mix says nothing of either.
    private const double LeastMix = 0.1;

    /// <summary>The channels, full scale ±1; null when a sample is not a number.</summary>
    public static double[][]? Decode(ReadOnlySpan<byte> data, SampleForm form)
    {
        var frames = data.Length / form.FrameBytes;
        var channels = new double[form.Channels][];
        for (var channel = 0; channel < channels.Length; channel++)
        {
            var samples = channels[channel] = new double[frames];
            var place = channel * form.Bytes;
            for (var frame = 0; frame < frames; frame++, place += form.FrameBytes)
            {
                var value = Value(data[place..], form);
                if (!double.IsFinite(value))
                    return null;
                samples[frame] = value;
            }
        }

        return channels;
    }

    /// <summary>The mean of the channels; the loudest alone where they cancel.</summary>
    public static double[] Mix(double[][] channels)
    {
        if (channels.Length == 1)
            return channels[0];
        var mixed = new double[channels[0].Length];
        foreach (var channel in channels)
            for (var index = 0; index < mixed.Length; index++)
                mixed[index] += channel[index] / channels.Length;
        var loudest = channels.MaxBy(Silence.Level)!;
        return Silence.Level(mixed) < LeastMix * Silence.Level(loudest) ? loudest : mixed;
    }

    private static double Value(ReadOnlySpan<byte> at, SampleForm form) => (form.Bits, form.IsFloat) switch
    {
        (8, _) => (at[0] - 128) / 128.0,
        (16, _) => BinaryPrimitives.ReadInt16LittleEndian(at) / 32768.0,
        (24, _) => ((at[0] | (at[1] << 8) | ((sbyte)at[2] << 16)) / 8388608.0),
        (32, false) => BinaryPrimitives.ReadInt32LittleEndian(at) / 2147483648.0,
        (32, true) => BinaryPrimitives.ReadSingleLittleEndian(at),
        _ => BinaryPrimitives.ReadDoubleLittleEndian(at),
    };
}
