using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Which passwords are taken.</summary>
/// <remarks>
/// NIST SP 800-63B, revision 4, on passwords: 15 characters at least where the password is all that is asked, long ones taken, no rule on kinds of characters, common and
/// expected ones refused.
/// </remarks>
public static class PasswordRules
{
    /// <summary>Fewest characters.</summary>
    public const int Shortest = 15;

    /// <summary>Most characters; far more than anyone types, few enough that a sign-in stays cheap.</summary>
    public const int Longest = 256;

    private const int FewestDifferent = 5;
    private const int LongestDate = 9;

    // Words of the trade of this program, the roles, and starts of lists of the passwords that people choose most; from memory.
    private static readonly string[] Expected =
    [
        "proveout", "bench", "workshop", "machine", "builder", "checker", "reader", "journal", "printer", "router",
        "password", "passphrase", "letmein", "welcome", "admin", "administrator", "iloveyou", "monkey", "dragon", "football", "baseball", "sunshine", "princess", "superman", "secret", "changeme", "trustno",
        "master", "shadow", "login", "default", "qwerty", "qwertz", "azerty", "correcthorsebatterystaple", "1q2w3e4r", "zaq12wsx", "abc123",
    ];

    private static readonly string[] Rows =
    [
        "abcdefghijklmnopqrstuvwxyz", "01234567890123456789", "98765432109876543210", "qwertyuiopasdfghjklzxcvbnm", "qwertzuiopasdfghjklyxcvbnm", "azertyuiopqsdfghjklmwxcvbn", "1qaz2wsx3edc4rfv5tgb6yhn7ujm",
    ];

    /// <summary>Why a password is not taken for a person; null when it is.</summary>
    public static Diagnostic? Against(string password, string person) => password.Length switch
    {
        < Shortest => Refused("password-short", $"The password has {password.Length} characters.", $"Take {Shortest} at least: four or five words that do not belong together are easy to keep in mind."),
        > Longest => Refused("password-long", $"The password has more than {Longest} characters.", "Take a shorter one."),
        _ when IsExpected(password, person) => Refused("password-common", "This is a password that others try first.", "Take four or five words that do not belong together, and neither your name nor that of the bench."),
        _ => null,
    };

    // What is left when every word that is tried first is struck out would have to guard the door alone.
    private static bool IsExpected(string password, string person)
    {
        var left = string.Concat(password.ToLowerInvariant().Where(char.IsLetterOrDigit));
        if (left.Distinct().Count() < FewestDifferent)
            return true;
        foreach (var word in NamesOf(person).Concat(Expected).OrderByDescending(word => word.Length))
            left = left.Replace(word, "", StringComparison.Ordinal);
        return left.Length < FewestDifferent || (left.Length < LongestDate && left.All(char.IsAsciiDigit)) || Rows.Any(row => row.Contains(left, StringComparison.Ordinal));
    }

    private static IEnumerable<string> NamesOf(string person) => person.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(name => name.Length > 2);

    private static Diagnostic Refused(string rule, string message, string mend) => new(rule, new SourcePlace("password", 0, 0), message, mend);
}
