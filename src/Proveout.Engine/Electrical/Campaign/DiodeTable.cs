namespace Proveout.Engine.Electrical;

/// <summary>The diode tests of one set-up, with the limits of their volts in the machine as designed.</summary>
internal sealed class DiodeTable : ICheckTable
{
    /// <summary>Makes the table of the candidates of one set-up, which follow each other from an index on.</summary>
    public DiodeTable(StateNetwork state, WiringNetwork wiring, CandidateCheck[] candidates, int firstCheck)
    {
        (Candidates, FirstCheck, StrayPaths, Strays) = (candidates, firstCheck, state.StrayPaths, state.Strays);
        var pairs = Array.ConvertAll(candidates, candidate => (candidate.A, candidate.B));
        Low = new LimitPorts(wiring, state, atHigh: false, pairs, [], everyIsland: true);
        High = new LimitPorts(wiring, state, atHigh: true, pairs, []);
        Paths = new PathVolts(wiring, state, DiodeTestMode.HandHeld);
        Ways = Array.ConvertAll(pairs, pair => Paths.Best(pair.A, pair.B));
        Good = [.. candidates.Select((_, index) => Volts(index, Low.Ports.Ohms(index), High.Ports.Ohms(index), Strays, Low.Ports.IslandsOf(index), Ways[index]))];
    }

    /// <summary>The candidates.</summary>
    public CandidateCheck[] Candidates { get; }

    /// <summary>Index of the first of them among all checks.</summary>
    public int FirstCheck { get; }

    /// <summary>Junctions and insulation.</summary>
    public StrayPaths StrayPaths { get; }

    /// <summary>What of them touches each island of the low network.</summary>
    public StrayPieces Strays { get; }

    /// <summary>The ports with every resistance at its low limit.</summary>
    public LimitPorts Low { get; }

    /// <summary>The ports with every resistance at its high limit.</summary>
    public LimitPorts High { get; }

    /// <summary>Finds single ways from lead to lead.</summary>
    public PathVolts Paths { get; }

    /// <summary>The best single way of each port in the machine as designed.</summary>
    public VoltWay[] Ways { get; }

    /// <summary>Limits of the volts of each port in the machine as designed; infinite when over range.</summary>
    public (double LowVolts, double HighVolts)[] Good { get; }

    /// <summary>Limits of the volts of a port from what resistances, junctions and insulation leave.</summary>
    public (double LowVolts, double HighVolts) Volts(
        int index, double lowOhms, double highOhms, StrayPieces strays, (int OfA, int OfB) pieces, VoltWay way)
    {
        var mode = (DiodeTestMode)Candidates[index].Mode;
        var least = strays.LeastVolts(lowOhms, pieces.OfA, pieces.OfB, mode.LeastAmperes);
        return (least, Math.Max(least, Math.Min(highOhms * mode.MostAmperes, way.Volts)));
    }

    /// <inheritdoc/>
    public ICheckWorker NewWorker() => new DiodeWorker(this);
}
