namespace Proveout.Engine.Machine;

/// <summary>Words as they begin a sentence or a heading.</summary>
public static class Capital
{
    /// <summary>The words with their first letter as a capital; empty words stay so.</summary>
    public static string Of(string words) => string.IsNullOrEmpty(words) ? "" : char.ToUpperInvariant(words[0]) + words[1..];
}
