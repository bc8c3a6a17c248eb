namespace Proveout.Engine.Faults;

/// <summary>Simulates several faults made at once; what one fault alone shows stands in the <see cref="FaultDictionary"/>.</summary>
public interface IFaultSimulator
{
    /// <summary>What a check may show when all these faults are made at once; null when they contradict each other.</summary>
    /// <param name="faults">Indices of the faults, each once.</param>
    /// <param name="check">Index of the check.</param>
    ReadingInterval? Shown(ReadOnlySpan<int> faults, int check);
}
