namespace Proveout.Engine.Electrical;

/// <summary>Finds which checks of one table surely catch a fault. One thread's own.</summary>
internal interface ICatchWorker
{
    /// <summary>Adds the checks, by index among all, that surely catch a fault, rising.</summary>
    void AddCatching(WiringFault fault, List<int> checks);
}
