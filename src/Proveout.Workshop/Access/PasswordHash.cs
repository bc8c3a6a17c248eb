using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Proveout.Workshop;

/// <summary>Passwords as they are kept: PBKDF2 with HMAC-SHA-512 (RFC 8018, 5.2) over a salt of its own.</summary>
/// <remarks>Rounds and salt stand in the text, so that both can grow later. Why this and no other: docs/decisions/2026-11-28-passwords.md.</remarks>
public static class PasswordHash
{
    /// <summary>Rounds of a new hash; the Password Storage Cheat Sheet of OWASP asks for 210 000 at least.</summary>
    public const int Rounds = 300_000;

    private const string Kind = "pbkdf2-sha512";
    private const int SaltBytes = 16;
    private const int HashBytes = 32;

    // Compared with when nobody has the name, so that an unknown name takes as long as a known one.
    private static readonly string Nobody = Make(Convert.ToHexString(RandomNumberGenerator.GetBytes(SaltBytes)));

    /// <summary>What is kept of a password.</summary>
    public static string Make(string password)
    {
        var salt = RandomNumberGenerator.GetBytes(SaltBytes);
        return string.Create(CultureInfo.InvariantCulture, $"{Kind}:{Rounds}:{Convert.ToBase64String(salt)}:{Convert.ToBase64String(Derive(password, salt, Rounds))}");
    }

    /// <summary>Whether a password is the one that was kept; false for a text that is no hash.</summary>
    /// <param name="password">As typed.</param>
    /// <param name="kept">What was kept; null or empty when nobody has the name, or the person has no password. It takes as long all the same.</param>
    public static bool Fits(string password, string? kept)
    {
        var known = kept is { Length: > 0 };
        var parts = (known ? kept! : Nobody).Split(':');
        if (parts is not [Kind, var rounds, var salt, var hash] || !int.TryParse(rounds, NumberStyles.None, CultureInfo.InvariantCulture, out var count))
            return false;
        var derived = Derive(password, Convert.FromBase64String(salt), count);
        return CryptographicOperations.FixedTimeEquals(derived, Convert.FromBase64String(hash)) & known;
    }

    private static byte[] Derive(string password, byte[] salt, int rounds) =>
        Rfc2898DeriveBytes.Pbkdf2(Encoding.UTF8.GetBytes(password), salt, rounds, HashAlgorithmName.SHA512, HashBytes);
}
