using System.Buffers.Binary;

namespace Proveout.Fuzz;

/// <summary>Changes of single bytes and of the numbers that bytes may be.</summary>
/// <param name="random">Chooses.</param>
internal sealed class ByteChanges(Random random)
{
    private static readonly byte[] Signs = [0x00, 0x01, 0x09, 0x0A, 0x0D, 0x1A, 0x1B, 0x20, 0x22, 0x27, 0x2C, 0x2F, 0x3A, 0x3B, 0x5C, 0x7F, 0x80, 0xBF, 0xC0, 0xFE, 0xFF];

    private static readonly long[] Edges =
    [
        0, 1, -1, 2, 16, 64, 100, 127, 128, -128, 255, 256, 512, 1000, 4096, 32767, 32768, -32768, 65535, 65536, 100_000, int.MaxValue, int.MinValue,
        (long)int.MaxValue + 1, uint.MaxValue, long.MaxValue, long.MinValue,
    ];

    public IReadOnlyList<Func<byte[], byte[], byte[]>> All => [FlipBit, SetByte, SetSign, AddSmall, SetEdge, SetEdge, SetDouble];

    private byte[] FlipBit(byte[] input, byte[] other) => At(input, 1, place => place[0] ^= (byte)(1 << random.Next(8)));

    private byte[] SetByte(byte[] input, byte[] other) => At(input, 1, place => place[0] = (byte)random.Next(256));

    private byte[] SetSign(byte[] input, byte[] other) => At(input, 1, place => place[0] = Signs[random.Next(Signs.Length)]);

    private byte[] AddSmall(byte[] input, byte[] other) => At(input, 1, place => place[0] += (byte)random.Next(-16, 17));

    private byte[] SetEdge(byte[] input, byte[] other)
    {
        var (edge, width, isBig) = (Edges[random.Next(Edges.Length)], 1 << random.Next(1, 4), random.Next(2) == 0);
        return At(input, width, place =>
        {
            Span<byte> number = stackalloc byte[8];
            if (isBig)
                BinaryPrimitives.WriteInt64BigEndian(number, edge);
            else
                BinaryPrimitives.WriteInt64LittleEndian(number, edge);
            (isBig ? number[(8 - width)..] : number[..width]).CopyTo(place);
        });
    }

    private byte[] SetDouble(byte[] input, byte[] other)
    {
        double[] values = [double.NaN, double.PositiveInfinity, double.NegativeInfinity, double.MaxValue, double.Epsilon, -0.0];
        var value = values[random.Next(values.Length)];
        return random.Next(2) == 0
            ? At(input, 8, place => BinaryPrimitives.WriteDoubleLittleEndian(place, value))
            : At(input, 4, place => BinaryPrimitives.WriteSingleLittleEndian(place, (float)value));
    }

    private delegate void Change(Span<byte> place);

    private byte[] At(byte[] input, int width, Change change)
    {
        if (input.Length < width)
            return input;
        byte[] changed = [.. input];
        change(changed.AsSpan(random.Next(input.Length - width + 1), width));
        return changed;
    }
}
