using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Simulates one fault after the other at the checks of all tables. One thread's own.</summary>
internal sealed class FaultResponder(ICheckTable[] tables)
{
    private readonly ICheckWorker[] _workers = WiringCampaign.Workers(tables);
    private readonly List<int> _checks = [];
    private readonly List<ReadingInterval> _intervals = [];

    /// <summary>What a fault changes.</summary>
    public FaultResponse Respond(WiringFault fault)
    {
        _checks.Clear();
        _intervals.Clear();
        foreach (var worker in _workers)
            worker.AddResponses(fault, _checks, _intervals);
        return new FaultResponse([.. _checks], [.. _intervals]);
    }
}
