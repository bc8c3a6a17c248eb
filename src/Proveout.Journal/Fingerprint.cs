using System.Security.Cryptography;
using System.Text;

namespace Proveout.Journal;

/// <summary>SHA-256 (FIPS 180-4) as 64 lower-case hexadecimal digits.</summary>
public static class Fingerprint
{
    /// <summary>The fingerprint of a text in UTF-8, without byte order mark.</summary>
    public static string OfText(string text) => OfBytes(Encoding.UTF8.GetBytes(text));

    /// <summary>The fingerprint of bytes.</summary>
    public static string OfBytes(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    internal static bool IsOne(string text) => text.Length == 64 && text.All(char.IsAsciiHexDigitLower);
}
