using System.Collections.Concurrent;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>What two mistakes together do, by the live model where neither alone does damage.</summary>
/// <remarks>Two that do damage alone are taken to do so together: one may spare the machine what the other does, but a plan must not count on it.</remarks>
/// <param name="consequences">Computes them.</param>
/// <param name="faults">The faults.</param>
/// <param name="dictionary">What each does alone.</param>
internal sealed class PairSeverities(LiveConsequences consequences, IReadOnlyList<WiringFault> faults, FaultDictionary dictionary)
{
    private readonly ConcurrentDictionary<(int One, int Two), Severity> _known = new();

    /// <summary>The severity of two faults made together; they do not contradict each other.</summary>
    public Severity Of(int one, int two)
    {
        var alone = (Severity)Math.Max((int)dictionary.Faults[one].Severity, (int)dictionary.Faults[two].Severity);
        return alone >= Severity.Damage
            ? alone
            : _known.GetOrAdd((one, two), pair => (Severity)Math.Max((int)alone, (int)consequences.Of([.. faults[pair.One].Changes, .. faults[pair.Two].Changes]).Severity));
    }
}
