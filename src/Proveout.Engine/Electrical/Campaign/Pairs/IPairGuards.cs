namespace Proveout.Engine.Electrical;

/// <summary>What holds the verdicts of the checks of one table while no other fault touches it. One thread's own.</summary>
internal interface IPairGuards
{
    /// <summary>Takes the faults whose verdicts are asked for, in place of those before.</summary>
    void Apply(int[] faults);

    /// <summary>Adds the faults that may overturn a verdict, more than once perhaps; false when nothing is known.</summary>
    /// <param name="index">Index of the check in the table.</param>
    /// <param name="isCaught">The verdict.</param>
    /// <param name="thoroughly">False to leave out what takes long to find.</param>
    /// <param name="faults">The faults.</param>
    bool TryAddOverturning(int index, bool isCaught, bool thoroughly, List<int> faults);
}
