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
        if (MeasuredIn(word => evidence.Off[word]) <= 1)
            yield return new([], evidence.LogSound, Aside(word => evidence.Off[word]));
        for (var fault = 0; fault < faultCount; fault++)
        {
            var one = fault;
            if ((!_isOff || IsNeeded(one)) && MeasuredIn(word => evidence.Unexplained(one, word)) <= 1)
                yield return new(
                    [one],
                    evidence.LogOdds(one) + evidence.LogSound + evidence.LogRatio(one),
                    Aside(word => evidence.Unexplained(one, word)));
        }
    }

    // A fault is needed when it explains something that the sound machine does not.
    private bool IsNeeded(int fault)
    {
        for (var word = 0; word < evidence.Words; word++)
            if ((evidence.Off[word] & ~evidence.Unexplained(fault, word)) != 0)
                return true;
        return false;
    }

    private int MeasuredIn(Func<int, ulong> set)
    {
        var count = 0;
        for (var word = 0; word < evidence.Words; word++)
            count += BitOperations.PopCount(set(word) & evidence.Measured[word]);
        return count;
    }

    private int[] Aside(Func<int, ulong> set) =>
        [.. Enumerable.Range(0, evidence.Words).SelectMany(word => Evidence.ItemsIn(set(word), word)).Select(item => evidence.Items[item].Check)];
}
