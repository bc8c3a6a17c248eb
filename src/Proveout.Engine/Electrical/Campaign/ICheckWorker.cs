namespace Proveout.Engine.Electrical;

/// <summary>Simulates faults at the checks of one table. One thread's own.</summary>
internal interface ICheckWorker
{
    /// <summary>Adds the checks that a fault changes, in rising order, with what they may then show.</summary>
    void AddResponses(WiringFault fault, AlteredReadings readings);
}
