using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Several faults at once at the checks of one table, one check at a time. One thread's own.</summary>
internal interface IPairWorker
{
    /// <summary>Takes faults that do not contradict each other in place of those before.</summary>
    void Apply(int[] faults);

    /// <summary>What a check may show.</summary>
    /// <param name="index">Index of the check in the table.</param>
    ReadingInterval Shown(int index);

    /// <summary>True when the check surely catches them.</summary>
    /// <param name="index">Index of the check in the table.</param>
    bool IsSurelyCaught(int index);
}
