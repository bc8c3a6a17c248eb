using System.Buffers.Binary;

namespace Proveout.Engine.Tests.Motion;

/// <summary>Writes WAV bytes by hand, so that the reader meets every form and every harm.</summary>
internal sealed record WavFile(double[][] Channels, uint Rate = 44_100)
{
    public int Bits { get; init; } = 16;

    public bool IsFloat { get; init; }

    public bool IsExtensible { get; init; }

    public int? Tag { get; init; }

    /// <summary>Length that the head of the samples claims; its true length when null.</summary>
    public uint? ClaimedLength { get; init; }

    /// <summary>A chunk of odd length between head and samples, as some recorders write.</summary>
    public bool HasNote { get; init; }

    public byte[] Bytes()
    {
        var data = Data();
        using var file = new MemoryStream();
        file.Write("RIFF"u8);
        Write32(file, (uint)(36 + data.Length));
        file.Write("WAVEfmt "u8);
        Write32(file, IsExtensible ? 40u : 16u);
        var tag = Tag ?? (IsFloat ? 3 : 1);
        Write16(file, IsExtensible ? 0xFFFE : tag);
        Write16(file, Channels.Length);
        Write32(file, Rate);
        Write32(file, (uint)(Rate * Channels.Length * Bits / 8));
        Write16(file, Channels.Length * Bits / 8);
        Write16(file, Bits);
        if (IsExtensible)
        {
            Write16(file, 22);
            Write16(file, Bits);
            Write32(file, 0);
            Write16(file, tag);
            file.Write([0, 0, 0, 0, 0x10, 0, 0x80, 0, 0, 0xAA, 0, 0x38, 0x9B, 0x71]);
        }

        if (HasNote)
            file.Write([.. "LIST"u8, 3, 0, 0, 0, 1, 2, 3, 0]);
        file.Write("data"u8);
        Write32(file, ClaimedLength ?? (uint)data.Length);
        file.Write(data);
        return file.ToArray();
    }

    private byte[] Data()
    {
        using var data = new MemoryStream();
        var bytes = new byte[8];
        for (var frame = 0; frame < Channels[0].Length; frame++)
            foreach (var channel in Channels)
            {
                Encode(channel[frame], bytes);
                data.Write(bytes, 0, Bits / 8);
            }

        return data.ToArray();
    }

    private void Encode(double sample, byte[] bytes)
    {
        if (IsFloat && Bits == 32)
            BinaryPrimitives.WriteSingleLittleEndian(bytes, (float)sample);
        else if (IsFloat)
            BinaryPrimitives.WriteDoubleLittleEndian(bytes, sample);
        else
            BinaryPrimitives.WriteInt64LittleEndian(bytes, Integer(sample));
    }

    private long Integer(double sample)
    {
        var scale = Math.ScaleB(1, Bits - 1);
        var value = (long)Math.Clamp(Math.Round(sample * scale), -scale, scale - 1);
        return Bits == 8 ? value + 128 : value;
    }

    private static void Write16(Stream file, int value) => file.Write([(byte)value, (byte)(value >> 8)]);

    private static void Write32(Stream file, uint value) => file.Write([(byte)value, (byte)(value >> 8), (byte)(value >> 16), (byte)(value >> 24)]);
}
