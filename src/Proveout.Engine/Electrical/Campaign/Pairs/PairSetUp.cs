namespace Proveout.Engine.Electrical;

/// <summary>One set-up: its checks, and the networks with all controls at rest that it changes.</summary>
internal sealed class PairSetUp(PortTable table, PairLimit low, PairLimit high)
{
    /// <summary>Its checks.</summary>
    public PortTable Table { get; } = table;

    /// <summary>Every resistance at its low limit.</summary>
    public PairLimit Low { get; } = low;

    /// <summary>Every resistance at its high limit.</summary>
    public PairLimit High { get; } = high;

    /// <summary>Bounds of what all junctions and insulation together can do.</summary>
    public StrayBound Strays { get; } = new(table.StrayPaths);
}
