using System.Buffers.Text;
using System.Security.Cryptography;

namespace Proveout.Journal.Chain;

/// <summary>
/// The byte form that hashes are taken over: netstrings (D. J. Bernstein, 1997) one after the other, so that no two different lists of
/// fields give the same bytes. See docs/methods/journal-chain.md.
/// </summary>
internal static class CanonicalForm
{
    private const int MostDigits = 10;

    /// <summary>SHA-256 over the fields, as 64 lower-case hexadecimal digits in ASCII.</summary>
    public static byte[] Hash(ReadOnlySpan<byte> title, params ReadOnlySpan<byte[]> fields) =>
        FieldText.Write(Convert.ToHexStringLower(SHA256.HashData(Bytes(title, fields))));

    /// <summary>The fields as netstrings.</summary>
    public static byte[] Bytes(ReadOnlySpan<byte> title, params ReadOnlySpan<byte[]> fields) => Bytes(title, fields, starts: []);

    /// <summary>The fields as netstrings, and where the bytes of each field begin.</summary>
    /// <param name="title">What it is of.</param>
    /// <param name="fields">The fields.</param>
    /// <param name="starts">Filled for as many fields as there is room for.</param>
    public static byte[] Bytes(ReadOnlySpan<byte> title, ReadOnlySpan<byte[]> fields, Span<int> starts)
    {
        var length = LengthOf(title);
        foreach (var field in fields)
            length += LengthOf(field);
        var bytes = new byte[length];
        Add(bytes, 0, title, out var at);
        for (var index = 0; index < fields.Length; index++)
        {
            var start = Add(bytes, at, fields[index], out at);
            if (index < starts.Length)
                starts[index] = start;
        }
        return bytes;
    }

    private static int LengthOf(ReadOnlySpan<byte> field)
    {
        Span<byte> digits = stackalloc byte[MostDigits];
        Utf8Formatter.TryFormat(field.Length, digits, out var written);
        return written + 2 + field.Length;
    }

    private static int Add(Span<byte> bytes, int at, ReadOnlySpan<byte> field, out int end)
    {
        Utf8Formatter.TryFormat(field.Length, bytes[at..], out var written);
        var start = at + written + 1;
        bytes[start - 1] = (byte)':';
        field.CopyTo(bytes[start..]);
        end = start + field.Length + 1;
        bytes[end - 1] = (byte)',';
        return start;
    }
}
