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
    public static byte[] Hash(ReadOnlySpan<byte> title, params ReadOnlySpan<byte[]> fields)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Add(hash, title);
        foreach (var field in fields)
            Add(hash, field);
        return FieldText.Write(Convert.ToHexStringLower(hash.GetHashAndReset()));
    }

    private static void Add(IncrementalHash hash, ReadOnlySpan<byte> field)
    {
        hash.AppendData(Encoding.ASCII.GetBytes(field.Length.ToString(CultureInfo.InvariantCulture)));
        hash.AppendData(":"u8);
        hash.AppendData(field);
        hash.AppendData(","u8);
    }
}
