using System.Security.Cryptography;
using Proveout.Journal.Chain;

namespace Proveout.Journal.Rescue;

/// <summary>
/// Puts a single flipped bit back: each bit is tried until the fields give the hash. That a wrong one does is as likely as guessing 256 bits.
/// </summary>
internal static class Mending
{
    // Some thirty thousand hashes: a tenth of a second.
    private const int MostBytes = 4096;

    private const int SequenceBits = 64;

    public static StoredEntry? Of(StoredEntry entry)
    {
        var computed = entry.ComputeHash();
        if (DifferByOneBit(computed, entry.Hash))
            return entry with { Hash = computed };
        byte[][] fields = [entry.PreviousHash, entry.BuildId, FieldText.Write(entry.Sequence), entry.Key, entry.Recorded, entry.Person, entry.Instrument, entry.Content];
        if (IsTooLong(fields))
            return null;
        // The sequence is kept as a number and hashed as digits.
        for (var bit = 0; bit < SequenceBits; bit++)
            if (entry with { Sequence = entry.Sequence ^ (1L << bit) } is var tried && Same(tried.ComputeHash(), entry.Hash))
                return tried;
        return Mended(StoredEntry.Title, fields, entry.Hash, isTried: field => field != 2) is { } mended
            ? new StoredEntry(mended[1], entry.Sequence, mended[3], mended[4], mended[5], mended[6], mended[7], mended[0], entry.Hash)
            : null;
    }

    public static StoredBuild? Of(StoredBuild build)
    {
        var computed = build.ComputeHash();
        if (DifferByOneBit(computed, build.Hash))
            return build with { Hash = computed };
        byte[][] fields = [build.Id, build.Serial, build.MachineName, build.MachineFingerprint, build.Builder, build.Started];
        return !IsTooLong(fields) && Mended(StoredBuild.Title, fields, build.Hash, isTried: _ => true) is { } mended
            ? new StoredBuild(mended[0], mended[1], mended[2], mended[3], mended[4], mended[5], build.Hash)
            : null;
    }

    /// <summary>The fields with the one bit put back that gives the hash; null when none does.</summary>
    private static byte[][]? Mended(ReadOnlySpan<byte> title, byte[][] fields, byte[] hash, Func<int, bool> isTried)
    {
        if (DigestOf(hash) is not { } wanted)
            return null;
        // Written once and flipped in place: a large file has thousands of rows to mend, and each has thousands of bits.
        Span<int> starts = stackalloc int[fields.Length];
        var bytes = CanonicalForm.Bytes(title, fields, starts);
        Span<byte> digest = stackalloc byte[SHA256.HashSizeInBytes];
        for (var field = 0; field < fields.Length; field++)
            for (var bit = 0; isTried(field) && bit < fields[field].Length * 8; bit++)
            {
                ref var flipped = ref bytes[starts[field] + (bit / 8)];
                flipped ^= (byte)(1 << (bit % 8));
                SHA256.HashData(bytes, digest);
                if (digest.SequenceEqual(wanted))
                    return With(fields, field, bytes.AsSpan(starts[field], fields[field].Length).ToArray());
                flipped ^= (byte)(1 << (bit % 8));
            }
        return null;
    }

    private static byte[][] With(byte[][] fields, int place, byte[] mended) => [.. fields.Select((field, at) => at == place ? mended : field)];

    // Only what is written as we write hashes can be the hash of anything.
    private static byte[]? DigestOf(byte[] hash)
    {
        var text = FieldText.Read(hash);
        return text.Length == 2 * SHA256.HashSizeInBytes && text.All(char.IsAsciiHexDigitLower) ? Convert.FromHexString(text) : null;
    }

    private static bool IsTooLong(byte[][] fields) => fields.Sum(field => (long)field.Length) > MostBytes;

    private static bool DifferByOneBit(byte[] one, byte[] other) =>
        one.Length == other.Length && one.Zip(other).Sum(pair => byte.PopCount((byte)(pair.First ^ pair.Second))) == 1;

    private static bool Same(byte[] one, byte[] other) => one.AsSpan().SequenceEqual(other);
}
