using Proveout.Engine.Faults;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>What simulating several faults at once needs of a machine. Made once, read by all threads.</summary>
internal sealed class PairTables
{
    private readonly int[] _tableOf;
    private readonly ReadingInterval[] _expectations;

    /// <summary>Makes the tables of a campaign.</summary>
    public PairTables(WiringCampaign campaign)
    {
        Faults = campaign.Faults;
        Ports = campaign.PortTables();
        var limits = new Dictionary<ResistorNetwork, PairLimit>();
        Tables = Array.ConvertAll<PortTable, IPairTable>(Ports, table => new PairSetUp(table, Limit(limits, table.Low), Limit(limits, table.High)));
        _tableOf = [.. Tables.SelectMany((table, index) => Enumerable.Repeat(index, table.CheckCount))];
        _expectations = [.. Ports.SelectMany(table => table.Candidates).Select(candidate => candidate.Check.Expectation)];
        Contradictions = new Contradictions([.. Faults.Select(fault => Contradictions.ElementsOf(fault).ToArray())]);
    }

    /// <summary>The faults.</summary>
    public IReadOnlyList<WiringFault> Faults { get; }

    /// <summary>Every check, for simulating one fault at all of them.</summary>
    public PortTable[] Ports { get; }

    /// <summary>Every check, for simulating several faults at one of them; in the same order.</summary>
    public IPairTable[] Tables { get; }

    /// <summary>Which faults cannot be made together.</summary>
    public Contradictions Contradictions { get; }

    /// <summary>What a check shows of the sound machine.</summary>
    public ReadingInterval ExpectationOf(int check) => _expectations[check];

    /// <summary>The table that a check is in, and its index there.</summary>
    public (int Table, int Index) PlaceOf(int check) => (_tableOf[check], check - Tables[_tableOf[check]].FirstCheck);

    // Set-ups with the same plugs apart share the network with all controls at rest.
    private PairLimit Limit(Dictionary<ResistorNetwork, PairLimit> ready, LimitPorts ports) =>
        ready.TryGetValue(ports.Ports.Network, out var limit) ? limit : ready[ports.Ports.Network] = new PairLimit(ports, Faults);
}
