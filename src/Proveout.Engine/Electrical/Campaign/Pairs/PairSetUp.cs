namespace Proveout.Engine.Electrical;

/// <summary>Readings of resistance in one set-up, and the networks with all controls at rest that it changes.</summary>
internal sealed class PairSetUp(PortTable table, PairLimit low, PairLimit high, IReadOnlyList<WiringFault> faults) : IPairTable
{
    private readonly CheckLimits[] _limits = [.. table.Candidates.AsParallel().AsOrdered().Select(CheckLimits.Of)];

    /// <inheritdoc/>
    public int FirstCheck => Table.FirstCheck;

    /// <inheritdoc/>
    public int CheckCount => Table.Candidates.Length;

    /// <summary>Its checks.</summary>
    public PortTable Table { get; } = table;

    /// <summary>Every resistance at its low limit.</summary>
    public PairLimit Low { get; } = low;

    /// <summary>Every resistance at its high limit.</summary>
    public PairLimit High { get; } = high;

    /// <summary>All faults.</summary>
    public IReadOnlyList<WiringFault> Faults { get; } = faults;

    /// <summary>The faults that change a contact which this set-up operates, rising: what they do is seen only once it moves.</summary>
    public int[] FaultsAtControls { get; } =
        [.. faults.Index().Where(item => item.Item.Changes.Any(change => change.ChangedElement is { } element && table.Low.Operates(element))).Select(item => item.Index)];

    /// <summary>Bounds of what all junctions and insulation together can do.</summary>
    public StrayBound Strays { get; } = new(table.Rest.StrayPaths);

    /// <summary>What the meter tells at a check.</summary>
    public CheckLimits LimitsOf(int index) => _limits[index];

    /// <inheritdoc/>
    public IPairWorker NewWorker(PairRoom room) => new PairSetUpWorker(this, room);

    /// <inheritdoc/>
    public IPairGuards NewGuards(PairRoom room) => new VerdictGuards(this, room);
}
