using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Names of parts and loads in sentences and identifiers.</summary>
internal static class LoadWords
{
    /// <summary>Such as <c>G3 (Exhaust filter)</c>.</summary>
    public static string Of(Part part) => part.Name.Length == 0 ? part.Designation : $"{part.Designation} ({part.Name})";

    /// <summary>Such as <c>A1 (Motion controller), logic-electronics,</c>.</summary>
    public static string Of(ILoad load) => load.Name.Length == 0 ? Of(load.Part) : $"{Of(load.Part)}, {load.Name.Replace('-', ' ')},";

    /// <summary>For identifiers.</summary>
    public static string Id(ILoad load) => $"{load.Part.Designation} {load.Name}";

    /// <summary>A list as people write it.</summary>
    public static string List(IReadOnlyList<string> words) =>
        words.Count < 2 ? string.Concat(words) : $"{string.Join(", ", words.Take(words.Count - 1))} and {words[^1]}";
}
