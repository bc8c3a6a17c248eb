namespace Proveout.Journal.Rescue;

/// <summary>The header of a row (sqlite.org/fileformat2.html, 2.1): the types of its fields, which tell the table it is of.</summary>
/// <param name="Shape">The table.</param>
/// <param name="Types">The serial type of each field.</param>
/// <param name="Length">Bytes of the header.</param>
internal sealed record RowHeader(RowShape Shape, long[] Types, int Length)
{
    private const long Id = (2 * 36) + 13, Digest = (2 * 64) + 13, Time = (2 * 28) + 13;
    private const long AnyText = -1, AnyBytes = -2, AnyNumber = -3;
    private const long MostBytes = 1L << 30;

    private static readonly (RowShape Shape, long[] Types)[] Shapes =
    [
        (RowShape.Build, [Id, AnyText, AnyText, Digest, AnyText, Time, Digest]),
        (RowShape.Entry, [Id, AnyNumber, Id, Time, AnyText, AnyText, AnyText, Digest, Digest]),
        (RowShape.End, [Id, AnyNumber, Digest]),
        (RowShape.File, [Digest, AnyBytes]),
        (RowShape.Seal, [Id, AnyNumber, Digest, Time, AnyText, AnyText, AnyText]),
    ];

    /// <summary>Bytes of header and fields.</summary>
    public long Payload => Length + Types.Sum(Size);

    /// <summary>The header that begins at the start of the bytes; null when none of ours does.</summary>
    public static RowHeader? At(ReadOnlySpan<byte> bytes)
    {
        // Nearly every place falls out here: the first field of every table of ours is an identifier or a digest.
        if (bytes.Length < 4 || bytes[0] is < 4 or > 60 || (bytes[1] != Id && bytes[1] != 0x81))
            return null;
        var (length, at) = (bytes[0], 1);
        Span<long> types = stackalloc long[9];
        var count = 0;
        while (at < length)
        {
            if (count == types.Length || Varint(bytes[at..], out var type) is not (> 0 and var used))
                return null;
            types[count++] = type;
            at += used;
        }
        if (at != length)
            return null;
        foreach (var (shape, expected) in Shapes)
            if (Fits(types[..count], expected))
                return new RowHeader(shape, types[..count].ToArray(), length);
        return null;
    }

    /// <summary>Bytes that a field of a serial type takes.</summary>
    public static long Size(long type) => type switch
    {
        >= 12 => (type - 12) / 2,
        5 => 6,
        6 or 7 => 8,
        8 or 9 or 0 => 0,
        _ => type,
    };

    private static bool Fits(ReadOnlySpan<long> types, long[] expected)
    {
        if (types.Length != expected.Length)
            return false;
        for (var index = 0; index < expected.Length; index++)
            if (!Fits(types[index], expected[index]))
                return false;
        return true;
    }

    private static bool Fits(long type, long expected) => expected switch
    {
        AnyText => type >= 13 && type % 2 == 1 && Size(type) < MostBytes,
        AnyBytes => type >= 12 && type % 2 == 0 && Size(type) < MostBytes,
        AnyNumber => type is (>= 1 and <= 6) or 8 or 9,
        _ => type == expected,
    };

    // Seven bits a byte, the highest says that more follow; nine bytes at most, of which five are more than any field here needs.
    private static int Varint(ReadOnlySpan<byte> bytes, out long value)
    {
        value = 0;
        for (var index = 0; index < Math.Min(5, bytes.Length); index++)
        {
            value = (value << 7) | (long)(bytes[index] & 0x7F);
            if (bytes[index] < 0x80)
                return index + 1;
        }
        return 0;
    }
}
