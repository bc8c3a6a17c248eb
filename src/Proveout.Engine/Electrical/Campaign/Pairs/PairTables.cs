using Proveout.Engine.Faults;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>What simulating several faults at once needs of a machine. Made once, read by all threads.</summary>
internal sealed class PairTables
{
    private readonly ICheckTable[] _ofOneFault;
    private readonly int[] _tableOf;
    private readonly ReadingInterval[] _expectations;

    /// <summary>Makes the tables of a campaign.</summary>
    public PairTables(WiringCampaign campaign)
    {
        Faults = campaign.Faults;
        _ofOneFault = campaign.Tables();
        var limits = new Dictionary<ResistorNetwork, PairLimit>();
        var setUps = _ofOneFault.OfType<PortTable>().ToDictionary(table => table, table => new PairSetUp(table, Limit(limits, table.Low), Limit(limits, table.High), Faults));
        var places = new FaultPlaces(campaign.Context.Wiring, Faults);
        Tables = Array.ConvertAll<ICheckTable, IPairTable>(_ofOneFault, table => table switch
        {
            PortTable ports => setUps[ports],
            DiodeTable diodes => new PairDiodes(diodes, setUps.Values.First(setUp => IsOfSetUp(setUp.Table, diodes)), places),
            _ => throw new InvalidOperationException($"How faults made together change {table} is not known."),
        });
        _tableOf = [.. Tables.SelectMany((table, index) => Enumerable.Repeat(index, table.CheckCount))];
        _expectations = [.. campaign.Expectations];
        Contradictions = new Contradictions([.. Faults.Select(fault => Contradictions.ElementsOf(fault).ToArray())]);
    }

    /// <summary>The faults.</summary>
    public IReadOnlyList<WiringFault> Faults { get; }

    /// <summary>Every check.</summary>
    public IPairTable[] Tables { get; }

    /// <summary>Which faults cannot be made together.</summary>
    public Contradictions Contradictions { get; }

    /// <summary>Makes what one thread simulates one fault at every check with.</summary>
    public ICheckWorker[] NewWorkers() => WiringCampaign.Workers(_ofOneFault);

    /// <summary>What a check shows of the sound machine.</summary>
    public ReadingInterval ExpectationOf(int check) => _expectations[check];

    /// <summary>The table that a check is in, and its index there.</summary>
    public (int Table, int Index) PlaceOf(int check) => (_tableOf[check], check - Tables[_tableOf[check]].FirstCheck);

    private static bool IsOfSetUp(PortTable ports, DiodeTable diodes) =>
        ports.Candidates[0].SetUp == diodes.Candidates[0].SetUp && ports.Candidates[0].TiedTo is null;

    // Set-ups with the same plugs apart share the network with all controls at rest.
    private PairLimit Limit(Dictionary<ResistorNetwork, PairLimit> ready, LimitPorts ports) =>
        ready.TryGetValue(ports.Ports.Network, out var limit) ? limit : ready[ports.Ports.Network] = new PairLimit(ports, Faults);
}
