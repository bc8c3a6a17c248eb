using System.Text.RegularExpressions;

namespace Proveout.Engine.Machine;

/// <summary>How a kind of name is spelled.</summary>
/// <param name="Kind">What it names, such as <c>terminal</c>.</param>
/// <param name="Pattern">Regular expression of the whole name, in the part of the syntax that .NET and ECMA 262 share.</param>
/// <param name="Form">The rule in words.</param>
internal sealed partial record NameRule(string Kind, string Pattern, string Form)
{
    private const string DesignationPattern = "^[A-Z][A-Za-z0-9_-]{0,39}$";
    private const string TypePattern = "^[a-z0-9][a-z0-9.-]{0,79}$";
    private const string LetterPattern = "^[A-Z]{1,3}$";
    private const string MarkPattern = @"^\S(.{0,78}\S)?$";

    /// <summary>Reference designations, IEC 81346-2; no full stop, since one parts designation and terminal.</summary>
    public static readonly NameRule Designation = new(
        "part",
        DesignationPattern,
        "a capital letter, then letters, digits or hyphens, such as `K1`");

    /// <summary>Identifiers of part types.</summary>
    public static readonly NameRule PartType = new(
        "part type",
        TypePattern,
        "small letters, digits and hyphens, such as `terminal-block-4`");

    /// <summary>Class letters, IEC 81346-2.</summary>
    public static readonly NameRule ClassLetter = new("class letter", LetterPattern, "one to three capital letters, such as `K`");

    /// <summary>Names as marked on a part or chosen freely.</summary>
    public static NameRule Mark(string kind) => new(
        kind,
        MarkPattern,
        "text on one line, of at most 80 characters, without space around it");

    public bool Allows(string name) => Expression.IsMatch(name) && !name.EndsWith('\n') && !name.Any(char.IsControl);

    private Regex Expression => Pattern switch
    {
        DesignationPattern => DesignationExpression(),
        TypePattern => TypeExpression(),
        LetterPattern => LetterExpression(),
        _ => MarkExpression(),
    };

    [GeneratedRegex(DesignationPattern)]
    private static partial Regex DesignationExpression();

    [GeneratedRegex(TypePattern)]
    private static partial Regex TypeExpression();

    [GeneratedRegex(LetterPattern)]
    private static partial Regex LetterExpression();

    [GeneratedRegex(MarkPattern)]
    private static partial Regex MarkExpression();
}
