namespace Proveout.Engine.Electrical;

/// <summary>Finds for one fault after the other which checks of all tables surely catch it. One thread's own.</summary>
internal sealed class FaultCatcher
{
    private readonly List<ICatchWorker> _workers = [];
    private readonly List<int> _checks = [];

    /// <summary>Prepares for the checks of some tables.</summary>
    public FaultCatcher(ICheckTable[] tables)
    {
        foreach (var table in tables)
            _workers.Add(table.NewCatchWorker(_workers));
    }

    /// <summary>Indices of the checks that surely catch a fault, rising.</summary>
    public int[] Catching(WiringFault fault)
    {
        _checks.Clear();
        foreach (var worker in _workers)
            worker.AddCatching(fault, _checks);
        return [.. _checks];
    }
}
