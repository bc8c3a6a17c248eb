using System.Globalization;

namespace Proveout.Workshop;

/// <summary>Codes on paper for somebody whose authenticator is lost. Each is taken once.</summary>
/// <remarks>A code begins with its number, so that one hash is computed at a try and not ten.</remarks>
internal static class RecoveryCodes
{
    public const int Count = 10;

    private const int LettersAfterNumber = 10;

    /// <summary>New codes, and what is kept of them.</summary>
    public static (IReadOnlyList<string> Codes, IReadOnlyList<string> Hashes) New()
    {
        var codes = Enumerable.Range(1, Count).Select(number => string.Create(CultureInfo.InvariantCulture, $"{number}-{Secrets.NewCode()}")).ToArray();
        return (codes, [.. codes.Select(code => PasswordHash.Make(Secrets.PlainCode(code)))]);
    }

    /// <summary>The place of a code among those of its person and the code without dashes; null for what has not the shape of one.</summary>
    public static (int Place, string Plain)? Read(string typed)
    {
        var plain = Secrets.PlainCode(typed);
        var digits = plain.Length - LettersAfterNumber;
        return digits is 1 or 2 && int.TryParse(plain[..digits], NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= Count ? (number - 1, plain) : null;
    }
}
