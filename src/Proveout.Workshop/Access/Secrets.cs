using System.Security.Cryptography;
using System.Text;

namespace Proveout.Workshop;

/// <summary>Tokens and codes from the system's cryptographic generator, and what is kept of them.</summary>
internal static class Secrets
{
    // Without letters and digits that are taken for each other when read aloud or typed: I, L, O, 0, 1.
    private const string Letters = "ABCDEFGHJKMNPQRSTUVWXYZ23456789";
    private const int CodeLength = 10;
    private const int TokenBytes = 32;
    private const int LongestTyped = 100;

    /// <summary>A session's token: 256 bits (NIST SP 800-63B asks for 64 at least).</summary>
    public static string NewToken() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(TokenBytes));

    /// <summary>A code to read and type: ten of 31 letters, 49 bits, in two halves.</summary>
    public static string NewCode()
    {
        var code = RandomNumberGenerator.GetString(Letters, CodeLength);
        return $"{code[..(CodeLength / 2)]}-{code[(CodeLength / 2)..]}";
    }

    /// <summary>What is kept of a token. It is drawn at random from so many that a plain hash is enough.</summary>
    public static string HashOf(string secret) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));

    /// <summary>A code as typed, in any case, with or without the dash and blanks.</summary>
    public static string PlainCode(string typed) => string.Concat(typed.Take(LongestTyped).Where(char.IsAsciiLetterOrDigit)).ToUpperInvariant();

    /// <summary>Whether two hashes are equal, in a time that does not depend on where they differ.</summary>
    public static bool Equal(string one, string other) => CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(one), Encoding.ASCII.GetBytes(other));
}
