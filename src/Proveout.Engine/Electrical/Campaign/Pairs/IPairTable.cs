namespace Proveout.Engine.Electrical;

/// <summary>Checks that several faults at once are simulated at in the same way. Read by all threads.</summary>
internal interface IPairTable
{
    /// <summary>Index of the first of the checks among all.</summary>
    int FirstCheck { get; }

    /// <summary>Number of the checks, which follow each other.</summary>
    int CheckCount { get; }

    /// <summary>Makes what one thread simulates with.</summary>
    /// <param name="room">The thread's own.</param>
    IPairWorker NewWorker(PairRoom room);

    /// <summary>Makes what one thread looks for guards with.</summary>
    /// <param name="room">The thread's own.</param>
    IPairGuards NewGuards(PairRoom room);
}
