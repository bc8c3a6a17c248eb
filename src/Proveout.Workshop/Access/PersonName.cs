namespace Proveout.Workshop;

/// <summary>Names of people: what may be one, and when two are the same.</summary>
public static class PersonName
{
    /// <summary>Longest name, in characters.</summary>
    public const int Longest = 100;

    /// <summary>Whether two names are the same but for case and blanks around them.</summary>
    public static bool Same(string one, string other) => string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether a text can be a name: short enough, on one line, and with nothing in it that does not show.</summary>
    public static bool IsOne(string text) =>
        text.Trim() is { Length: > 0 and <= Longest } name
        && !name.Any(letter => char.IsControl(letter) || char.IsSurrogate(letter) || char.GetUnicodeCategory(letter) is System.Globalization.UnicodeCategory.Format);
}
