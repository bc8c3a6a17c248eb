using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Proveout.Journal.Chain;

/// <summary>
/// The byte form that hashes are taken over: netstrings (D. J. Bernstein, 1997) one after the other, so that no two different lists of
/// fields give the same bytes. See docs/methods/journal-chain.md.
/// </summary>
internal static class CanonicalForm
{
    /// <summary>SHA-256 over the fields, as 64 lower-case hexadecimal digits in ASCII.</summary>
    public static byte[] Hash(ReadOnlySpan<byte> title, params ReadOnlySpan<byte[]> fields) =>
        FieldText.Write(Convert.ToHexStringLower(SHA256.HashData(Bytes(title, fields))));

    /// <summary>The fields as netstrings.</summary>
    public static byte[] Bytes(ReadOnlySpan<byte> title, params ReadOnlySpan<byte[]> fields)
    {
        using var bytes = new MemoryStream();
        Add(bytes, title);
        foreach (var field in fields)
            Add(bytes, field);
        return bytes.ToArray();
    }

    private static void Add(MemoryStream bytes, ReadOnlySpan<byte> field)
    {
        bytes.Write(Encoding.ASCII.GetBytes(field.Length.ToString(CultureInfo.InvariantCulture)));
        bytes.Write(":"u8);
        bytes.Write(field);
        bytes.Write(","u8);
    }
}
