namespace Proveout.Engine.Electrical;

/// <summary>What simulating several faults at once needs of a machine. Made once, read by all threads.</summary>
internal sealed class PairTables
{
    private readonly int[] _setUpOf;
    private readonly CheckLimits[] _limits;
    private readonly int[][] _elements;

    /// <summary>Makes the tables of a campaign.</summary>
    public PairTables(WiringCampaign campaign)
    {
        Faults = campaign.Faults;
        var ready = new Dictionary<LimitKey, PairLimit>();
        SetUps = Array.ConvertAll(campaign.PortTables(), table => new PairSetUp(table, Limit(ready, table.Low), Limit(ready, table.High)));
        _setUpOf = [.. SetUps.SelectMany((setUp, index) => setUp.Table.Candidates.Select(_ => index))];
        _limits = [.. SetUps.SelectMany(setUp => setUp.Table.Candidates).AsParallel().AsOrdered().Select(CheckLimits.Of)];
        _elements = [.. Faults.Select(fault => Contradictions.ElementsOf(fault).ToArray())];
        Contradictions = new Contradictions(_elements);
    }

    /// <summary>The faults.</summary>
    public IReadOnlyList<WiringFault> Faults { get; }

    /// <summary>The set-ups.</summary>
    public PairSetUp[] SetUps { get; }

    /// <summary>Which faults cannot be made together.</summary>
    public Contradictions Contradictions { get; }

    /// <summary>Number of checks.</summary>
    public int CheckCount => _setUpOf.Length;

    /// <summary>Index of the set-up of a check.</summary>
    public int SetUpOf(int check) => _setUpOf[check];

    /// <summary>A check.</summary>
    public CandidateCheck Candidate(int check) => SetUps[_setUpOf[check]].Table.Candidates[check - SetUps[_setUpOf[check]].Table.FirstCheck];

    /// <summary>What the meter tells at a check.</summary>
    public CheckLimits LimitsOf(int check) => _limits[check];

    // Set-ups with the same plugs apart share the network with all controls at rest.
    private PairLimit Limit(Dictionary<LimitKey, PairLimit> ready, LimitPorts ports) =>
        ready.TryGetValue(new LimitKey(ports.Ports.Network), out var limit)
            ? limit
            : ready[new LimitKey(ports.Ports.Network)] = new PairLimit(ports, Faults);

    private readonly record struct LimitKey(Numerics.ResistorNetwork Network);
}
