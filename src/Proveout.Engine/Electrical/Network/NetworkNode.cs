namespace Proveout.Engine.Electrical;

/// <summary>A node of the wiring network.</summary>
/// <param name="Index">Number of the node, from 0.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Subject">The part's designation, or the conductor's identifier for an end.</param>
/// <param name="Place">The terminal's name, the inner node's name, or the terminal where the end belongs.</param>
public sealed record NetworkNode(int Index, NodeKind Kind, string Subject, string Place)
{
    /// <inheritdoc/>
    public override string ToString() => Kind switch
    {
        NodeKind.PlugContact => $"{Subject}.{Place} (plug)",
        NodeKind.ConductorEnd => $"end of {Subject} at {Place}",
        NodeKind.Inside => $"inside {Subject}: {Place}",
        _ => $"{Subject}.{Place}",
    };
}
