using System.Collections.Concurrent;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What two faults made together do when the machine is energised. Each pair is computed once, when it is asked for.</summary>
/// <remarks>Safe for several threads at once.</remarks>
/// <param name="live">What mistakes do.</param>
/// <param name="faults">The faults, by index.</param>
/// <param name="dictionary">The same faults with what each does alone.</param>
public sealed class PairConsequences(LiveConsequences live, IReadOnlyList<WiringFault> faults, FaultDictionary dictionary)
{
    private readonly ConcurrentDictionary<(int One, int Two), Consequence> _known = new();

    /// <summary>What both together do; the one may take the danger of the other away, or bring one that neither has alone.</summary>
    /// <param name="one">Index of a fault.</param>
    /// <param name="two">Index of another that does not contradict it.</param>
    public Consequence Of(int one, int two) => _known.GetOrAdd(
        (Math.Min(one, two), Math.Max(one, two)), pair => live.Of([.. faults[pair.One].Changes, .. faults[pair.Two].Changes]));

    /// <summary>The worse of the two alone.</summary>
    public Severity AloneWorst(int one, int two) => (Severity)Math.Max((int)dictionary.Faults[one].Severity, (int)dictionary.Faults[two].Severity);

    /// <summary>The severity that a plan is made against: of both together, and of each alone, because whoever finds and mends the one leaves the other.</summary>
    public Severity WorstOf(int one, int two)
    {
        var alone = AloneWorst(one, two);
        return alone >= Severity.Damage ? alone : (Severity)Math.Max((int)alone, (int)Of(one, two).Severity);
    }
}
