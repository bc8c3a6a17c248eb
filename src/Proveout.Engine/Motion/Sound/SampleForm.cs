namespace Proveout.Engine.Motion;

/// <summary>How a file holds its samples.</summary>
/// <param name="Bits">Bits of one sample of one channel: 8, 16, 24, 32 or 64.</param>
/// <param name="IsFloat">True for floating point (IEEE 754), false for integers.</param>
/// <param name="Channels">Channels; more than one are mixed down.</param>
public sealed record SampleForm(int Bits, bool IsFloat, int Channels)
{
    /// <summary>Bytes of one sample of one channel.</summary>
    internal int Bytes => Bits / 8;

    /// <summary>Bytes of one moment of all channels.</summary>
    internal int FrameBytes => Bytes * Channels;

    /// <summary>True when the reader knows this form.</summary>
    internal bool IsKnown => IsFloat ? Bits is 32 or 64 : Bits is 8 or 16 or 24 or 32;

    /// <summary>Whether a sample of this size stands at the end of the scale. Integers end a step below +1; floating point has no end, but what wrote it usually stops at 1.</summary>
    internal bool IsAtLimit(double sample) => Math.Abs(sample) >= (IsFloat ? 1 : 1 - Math.ScaleB(2.5, -Math.Min(Bits, 16)));
}
