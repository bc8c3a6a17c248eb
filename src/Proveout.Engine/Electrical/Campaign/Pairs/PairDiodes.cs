namespace Proveout.Engine.Electrical;

/// <summary>Diode tests of one set-up, on the networks of its resistances.</summary>
internal sealed class PairDiodes(DiodeTable table, PairSetUp resistances, FaultPlaces places) : IPairTable
{
    /// <inheritdoc/>
    public int FirstCheck => Table.FirstCheck;

    /// <inheritdoc/>
    public int CheckCount => Table.Candidates.Length;

    /// <summary>Its checks.</summary>
    public DiodeTable Table { get; } = table;

    /// <summary>The networks.</summary>
    public PairSetUp Resistances { get; } = resistances;

    /// <summary>Where faults change the wiring.</summary>
    public FaultPlaces Places { get; } = places;

    /// <inheritdoc/>
    public IPairWorker NewWorker(PairRoom room) => new PairDiodeWorker(this, room);

    /// <inheritdoc/>
    public IPairGuards NewGuards(PairRoom room) => new DiodeGuards(this, room);
}
