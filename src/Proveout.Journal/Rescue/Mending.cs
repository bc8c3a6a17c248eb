using System.Buffers.Binary;
using Proveout.Journal.Chain;

namespace Proveout.Journal.Rescue;

/// <summary>
/// Puts a single flipped bit back: each bit is tried until the fields give the hash. That a wrong one does is as likely as guessing 256 bits.
/// </summary>
internal static class Mending
{
    // Some eight thousand hashes: a tenth of a second.
    private const int MostBytes = 4096;

    public static StoredEntry? Of(StoredEntry entry)
    {
        var computed = entry.ComputeHash();
        if (DifferByOneBit(computed, entry.Hash))
            return entry with { Hash = computed };
        byte[][] fields =
        [
            [.. entry.BuildId], [.. BitConverter.GetBytes(BinaryPrimitives.ReverseEndianness(entry.Sequence))], [.. entry.Key], [.. entry.Recorded],
            [.. entry.Person], [.. entry.Instrument], [.. entry.Content], [.. entry.PreviousHash],
        ];
        return FlipUntil(fields, each => Entry(each, entry.Hash) is var tried && Same(tried.ComputeHash(), entry.Hash)) ? Entry(fields, entry.Hash) : null;
    }

    public static StoredBuild? Of(StoredBuild build)
    {
        var computed = build.ComputeHash();
        if (DifferByOneBit(computed, build.Hash))
            return build with { Hash = computed };
        byte[][] fields =
            [[.. build.Id], [.. build.Serial], [.. build.MachineName], [.. build.MachineFingerprint], [.. build.Builder], [.. build.Started]];
        return FlipUntil(fields, each => Same(Build(each, build.Hash).ComputeHash(), build.Hash)) ? Build(fields, build.Hash) : null;
    }

    private static StoredEntry Entry(byte[][] fields, byte[] hash) => new(
        fields[0], BinaryPrimitives.ReadInt64BigEndian(fields[1]), fields[2], fields[3], fields[4], fields[5], fields[6], fields[7], hash);

    private static StoredBuild Build(byte[][] fields, byte[] hash) =>
        new(fields[0], fields[1], fields[2], fields[3], fields[4], fields[5], hash);

    /// <summary>Leaves the fields mended and returns true, or leaves them as they were.</summary>
    private static bool FlipUntil(byte[][] fields, Func<byte[][], bool> isRight)
    {
        if (fields.Sum(field => field.Length) > MostBytes)
            return false;
        foreach (var field in fields)
            for (var bit = 0; bit < field.Length * 8; bit++)
            {
                field[bit / 8] ^= (byte)(1 << (bit % 8));
                if (isRight(fields))
                    return true;
                field[bit / 8] ^= (byte)(1 << (bit % 8));
            }
        return false;
    }

    private static bool DifferByOneBit(byte[] one, byte[] other) =>
        one.Length == other.Length && one.Zip(other).Sum(pair => byte.PopCount((byte)(pair.First ^ pair.Second))) == 1;

    private static bool Same(byte[] one, byte[] other) => one.AsSpan().SequenceEqual(other);
}
