namespace Proveout.Engine.Machine;

/// <summary>At which edges of a part its terminals sit, in the position its type is drawn in; spread evenly along each edge.</summary>
/// <param name="Above">Terminals at the upper edge, from left to right.</param>
/// <param name="Below">Terminals at the lower edge, from left to right.</param>
/// <param name="Left">Terminals at the left edge, from top to bottom.</param>
/// <param name="Right">Terminals at the right edge, from top to bottom.</param>
public sealed record TerminalSides(ValueList<string> Above, ValueList<string> Below, ValueList<string> Left, ValueList<string> Right)
{
    /// <summary>No edge is known.</summary>
    public static readonly TerminalSides None = new([], [], [], []);

    /// <summary>Every terminal that is named at an edge.</summary>
    public IEnumerable<string> All => [.. Above, .. Below, .. Left, .. Right];
}
