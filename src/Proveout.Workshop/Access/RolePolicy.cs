namespace Proveout.Workshop;

/// <summary>Which role may do what: the only place that says so.</summary>
public static class RolePolicy
{
    /// <summary>Every role, by the word for it.</summary>
    public static IReadOnlyList<string> Words { get; } = ["builder", "checker", "reader"];

    /// <summary>Whether a role may do it.</summary>
    public static bool Allows(AccessRole role, Permission permission) => permission switch
    {
        Permission.Open or Permission.See => true,
        Permission.Sign => role is AccessRole.Builder or AccessRole.Checker,
        Permission.Enter => role is AccessRole.Builder,
        _ => false,
    };

    /// <summary>The word for a role, as it stands beside a signature.</summary>
    public static string Word(AccessRole role) => role switch
    {
        AccessRole.Builder => "builder",
        AccessRole.Checker => "checker",
        _ => "reader",
    };

    /// <summary>The role that a word means; null when it means none.</summary>
    public static AccessRole? OfWord(string word) => word.Trim() switch
    {
        "builder" => AccessRole.Builder,
        "checker" => AccessRole.Checker,
        "reader" => AccessRole.Reader,
        _ => null,
    };
}
