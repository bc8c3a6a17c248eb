using System.Text.RegularExpressions;

namespace Proveout.Cli;

/// <summary>Names of kinds as they stand in JSON: lower case with hyphens.</summary>
internal static partial class ShapeWords
{
    public static string Of(Enum kind) => WordStart().Replace(kind.ToString(), "-$1").ToLowerInvariant();

    [GeneratedRegex("(?<=.)([A-Z])")]
    private static partial Regex WordStart();
}
