using System.Text.RegularExpressions;

namespace Proveout.Engine.Machine;

/// <summary>A heading, with its unit taken off.</summary>
/// <param name="Name">What is left.</param>
/// <param name="Unit">The unit in our spelling; empty when there is none.</param>
internal readonly partial record struct TableHead(string Name, string Unit)
{
    /// <summary>Longest text in characters that is searched for a unit. Nobody heads a column with more, and the search takes a power of the length.</summary>
    public const int MostSearched = 200;

    /// <summary>Reads headings such as <c>x [mm]</c>, <c>x (mm)</c>, <c>x / mm</c>, <c>x_mm</c>, <c>x mm</c>.</summary>
    public static TableHead Of(string text)
    {
        var name = text.Trim();
        return name.Length <= MostSearched && WithUnit().Match(name) is { Success: true } match && ColumnUnit.Find(match.Groups["unit"].Value.Trim()) is { } unit
            ? new(match.Groups["name"].Value.Trim(), unit.Name)
            : new(name, "");
    }

    [GeneratedRegex(@"^(?<name>.+?)\s*(?:\[(?<unit>[^\]]+)\]|\((?<unit>[^)]+)\)|/\s*(?<unit>\S+)|_(?<unit>[^_\s]+)|\s(?<unit>\S+))$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex WithUnit();
}
