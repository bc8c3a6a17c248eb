namespace Proveout.Engine.Electrical;

/// <summary>Checks of one set-up that are simulated together, with what the machine as designed shows.</summary>
internal interface ICheckTable
{
    /// <summary>Makes what one thread simulates faults with.</summary>
    /// <param name="before">Those of the tables before this one; for each fault they work first.</param>
    ICheckWorker NewWorker(IReadOnlyList<ICheckWorker> before);

    /// <summary>Makes what one thread finds with which of the checks catch a fault.</summary>
    /// <param name="before">Those of the tables before this one; for each fault they work first.</param>
    ICatchWorker NewCatchWorker(IReadOnlyList<ICatchWorker> before);
}
