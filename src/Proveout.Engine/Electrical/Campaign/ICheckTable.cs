namespace Proveout.Engine.Electrical;

/// <summary>Checks of one set-up that are simulated together, with what the machine as designed shows.</summary>
internal interface ICheckTable
{
    /// <summary>Makes what one thread simulates faults with.</summary>
    ICheckWorker NewWorker();
}
