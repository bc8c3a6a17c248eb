namespace Proveout.Engine.Electrical;

/// <summary>The ports of one set-up under one fault, at both limits of resistances, and what junctions and insulation then leave of them. One thread's own.</summary>
/// <param name="table">The ports.</param>
/// <param name="low">The same at the low limit; those of the table, or with other ohms up to which a change is none.</param>
/// <param name="high">The same at the high limit.</param>
/// <param name="likewise">Others of the same thread on the same network; each are asked only until the others are given a fault.</param>
internal sealed class FaultyPorts(PortTable table, LimitPorts low, LimitPorts high, FaultyPorts? likewise = null)
{
    private readonly ChangedStrays _changedStrays = likewise?._changedStrays ?? new(table.Rest.StrayEnds);
    private bool _hasStrays;

    /// <summary>The ports with every resistance at its low limit.</summary>
    public LimitWorker Low { get; } = new(low, likewise?.Low);

    /// <summary>The ports with every resistance at its high limit.</summary>
    public LimitWorker High { get; } = new(high, likewise?.High);

    /// <summary>True when the fault is applied at a limit, so that it can alter a port there.</summary>
    public bool AreApplied => Low.IsApplied || High.IsApplied;

    /// <summary>What of junctions and insulation touches each piece of the low network.</summary>
    public StrayPieces Strays => MovesPieces ? ChangedStrays.Pieces : table.Strays;

    /// <summary>True when the fault parts or joins pieces of the low network.</summary>
    public bool MovesPieces => Low.IsApplied && !Low.Network.HasPiecesAsBefore;

    /// <summary>The same where the fault moves pieces.</summary>
    public ChangedStrays ChangedStrays
    {
        get
        {
            if (!_hasStrays)
                _ = _changedStrays.Of(Low.Network.Pieces);
            _hasStrays = true;
            return _changedStrays;
        }
    }

    /// <summary>Forgets the fault before, and what else was changed.</summary>
    public void Leave()
    {
        _hasStrays = false;
        Low.Leave();
        High.Leave();
    }

    /// <summary>Applies what the set-up itself changes, without a fault.</summary>
    public void ApplyControls()
    {
        Leave();
        Low.ApplyControls();
        High.ApplyControls();
    }

    /// <summary>The lower limit of a port in ohms, with junctions and insulation beside what the resistances alone leave.</summary>
    public double WithStrays(double lowOhms, int index)
    {
        if (lowOhms < StrayPieces.NegligibleOhms)
            return lowOhms;
        var (pieceOfA, pieceOfB) = Low.IsApplied ? Low.Network.PiecesOf(index) : table.Low.Ports.IslandsOf(index);
        return table.IsInsulation(index) && Strays.AreNearJunctions(pieceOfA, pieceOfB) ? 0 : Strays.LowerLimit(lowOhms, pieceOfA, pieceOfB);
    }
}
