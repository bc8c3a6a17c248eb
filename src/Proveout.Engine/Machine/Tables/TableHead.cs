using System.Text.RegularExpressions;

namespace Proveout.Engine.Machine;

/// <summary>A heading, with its unit taken off.</summary>
/// <param name="Name">What is left.</param>
/// <param name="Unit">The unit in our spelling; empty when there is none.</param>
internal readonly partial record struct TableHead(string Name, string Unit)
{
    /// <summary>Reads headings such as <c>x [mm]</c>, <c>x (mm)</c>, <c>x / mm</c>, <c>x_mm</c>, <c>x mm</c>.</summary>
    public static TableHead Of(string text)
    {
        var name = text.Trim();
        var match = WithUnit().Match(name);
        return match.Success && ColumnUnit.Find(match.Groups["unit"].Value.Trim()) is { } unit
            ? new(match.Groups["name"].Value.Trim(), unit.Name)
            : new(name, "");
    }

    [GeneratedRegex(@"^(?<name>.+?)\s*(?:\[(?<unit>[^\]]+)\]|\((?<unit>[^)]+)\)|/\s*(?<unit>\S+)|_(?<unit>[^_\s]+)|\s(?<unit>\S+))$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex WithUnit();
}
