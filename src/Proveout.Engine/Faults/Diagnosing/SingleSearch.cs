using System.Numerics;

namespace Proveout.Engine.Faults;

/// <summary>Weighs the sound machine and every fault alone; at most one reading may be set aside, symptoms as many as are false.</summary>
/// <param name="evidence">The readings.</param>
/// <param name="faultCount">Number of faults.</param>
internal sealed class SingleSearch(Evidence evidence, int faultCount)
{
    private readonly bool _isOff = evidence.Off.AsSpan().ContainsAnyExcept(0UL);

    /// <summary>The explanations, the sound machine first when it is one.</summary>
    public IEnumerable<Explanation> Run()
    {
        if (Measured(evidence.Off) <= 1)
            yield return new([], evidence.LogSound, Aside(evidence.Off));
        for (var fault = 0; fault < faultCount; fault++)
            if ((!_isOff || IsNeeded(fault)) && Measured(evidence.Unexplained(fault)) <= 1)
                yield return new(
                    [fault],
                    evidence.LogOdds(fault) + evidence.LogSound + evidence.LogRatio(fault),
                    Aside(evidence.Unexplained(fault)));
    }

    // A fault is needed when it explains something that the sound machine does not.
    private bool IsNeeded(int fault)
    {
        var unexplained = evidence.Unexplained(fault);
        for (var word = 0; word < unexplained.Length; word++)
            if ((evidence.Off[word] & ~unexplained[word]) != 0)
                return true;
        return false;
    }

    private int Measured(ReadOnlySpan<ulong> set)
    {
        var count = 0;
        for (var word = 0; word < set.Length; word++)
            count += BitOperations.PopCount(set[word] & evidence.Measured[word]);
        return count;
    }

    private int[] Aside(ReadOnlySpan<ulong> set)
    {
        List<int> checks = [];
        for (var word = 0; word < set.Length; word++)
            checks.AddRange(Evidence.ItemsIn(set[word], word).Select(item => evidence.Items[item].Check));
        return [.. checks];
    }
}
