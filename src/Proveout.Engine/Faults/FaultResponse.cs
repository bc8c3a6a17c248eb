namespace Proveout.Engine.Faults;

/// <summary>What one fault changes: the checks that may then read otherwise, and what they may then show.</summary>
/// <param name="Checks">Indices of the checks, rising.</param>
/// <param name="Intervals">What each of them may show.</param>
public sealed record FaultResponse(int[] Checks, ReadingInterval[] Intervals)
{
    /// <summary>The interval of a check under the fault, or null when the fault does not change it.</summary>
    public ReadingInterval? At(int check)
    {
        var place = Array.BinarySearch(Checks, check);
        return place >= 0 ? Intervals[place] : null;
    }
}
