using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Simulates one fault after the other at the checks of all tables. One thread's own.</summary>
internal sealed class FaultResponder(ICheckTable[] tables)
{
    private readonly ICheckWorker[] _workers = WiringCampaign.Workers(tables);
    private readonly AlteredReadings _readings = new();

    /// <summary>What a fault changes.</summary>
    public FaultResponse Respond(WiringFault fault)
    {
        _readings.Clear();
        foreach (var worker in _workers)
            worker.AddResponses(fault, _readings);
        return _readings.ToResponse();
    }
}
