using System.Buffers.Binary;

namespace Proveout.Engine.Motion;

/// <summary>What stands before the samples in a RIFF/WAVE file (Multimedia Programming Interface and Data Specifications 1.0, 1991; extensible head: RFC 2361 and the format's own later description, from memory).</summary>
/// <param name="Tag">1 for integers, 3 for floating point; others are compressed.</param>
/// <param name="Channels">Channels.</param>
/// <param name="RateHertz">Moments a second.</param>
/// <param name="Bits">Bits of one sample.</param>
internal sealed record WavHead(int Tag, int Channels, uint RateHertz, int Bits)
{
    private const int Extensible = 0xFFFE;
    private const int ShortestExtensible = 26;

    /// <summary>True when the samples are plain numbers.</summary>
    public bool IsPlain => Tag is 1 or 3;

    /// <summary>Reads the body of the format chunk; null when it is too short for one.</summary>
    public static WavHead? Read(ReadOnlySpan<byte> body)
    {
        if (body.Length < 16)
            return null;
        var tag = BinaryPrimitives.ReadUInt16LittleEndian(body);
        // The extensible head says in the first two bytes of its sub-format what the short head says at once.
        if (tag == Extensible)
        {
            if (body.Length < ShortestExtensible)
                return null;
            tag = BinaryPrimitives.ReadUInt16LittleEndian(body[24..]);
        }

        return new(
            tag,
            BinaryPrimitives.ReadUInt16LittleEndian(body[2..]),
            BinaryPrimitives.ReadUInt32LittleEndian(body[4..]),
            BinaryPrimitives.ReadUInt16LittleEndian(body[14..]));
    }
}
