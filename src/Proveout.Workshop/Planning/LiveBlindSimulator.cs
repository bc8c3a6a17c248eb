using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Simulates several faults at once on the dead checks; what two of them do to a live check or a symptom is left open.</summary>
/// <param name="dead">Simulates the dead checks.</param>
/// <param name="deadChecks">Number of dead checks; those of greater index are live.</param>
internal sealed class LiveBlindSimulator(IFaultSimulator dead, int deadChecks) : IFaultSimulator
{
    /// <inheritdoc/>
    public ReadingInterval? Shown(ReadOnlySpan<int> faults, int check) => check < deadChecks ? dead.Shown(faults, check) : ReadingInterval.Anything;
}
