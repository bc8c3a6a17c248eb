namespace Proveout.Engine.Faults;

/// <summary>What a trade knows of faults made together. One thread's own.</summary>
public interface IFaultInteractions : IFaultSimulator
{
    /// <summary>The faults that cannot be made together with a fault, rising.</summary>
    IReadOnlyList<int> Contradicting(int fault);

    /// <summary>True when a check surely catches all these faults together; they do not contradict each other.</summary>
    bool IsSurelyCaught(ReadOnlySpan<int> faults, int check);

    /// <summary>The faults that may overturn a verdict: made together with these, any number of the others leaves it as it is.</summary>
    /// <param name="faults">The faults whose verdict it is; none for the sound machine. They do not contradict each other.</param>
    /// <param name="check">The check.</param>
    /// <param name="isCaught">The verdict: true when the check surely catches these faults together.</param>
    /// <param name="thoroughly">False to leave out what takes long to find.</param>
    /// <returns>The faults, rising; null when nothing is known, so that any may.</returns>
    int[]? Overturning(ReadOnlySpan<int> faults, int check, bool isCaught, bool thoroughly = true);

    /// <summary>What every check says of all these faults together; they do not contradict each other.</summary>
    TogetherShows ShowsTogether(ReadOnlySpan<int> faults);

    /// <summary>The same for another thread.</summary>
    IFaultInteractions ForAnotherThread();
}
