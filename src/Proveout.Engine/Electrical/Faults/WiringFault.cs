using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A mistake in the wiring, with what it does to the network.</summary>
/// <param name="Fault">The mistake, in words.</param>
/// <param name="Changes">What it does; each element is changed at most once.</param>
public sealed record WiringFault(Fault Fault, IReadOnlyList<ElementChange> Changes)
{
    /// <summary>What it does; each element is changed at most once.</summary>
    /// <remarks>Copied, so that the lists of all faults are of one class: a campaign goes through them millions of times.</remarks>
    public IReadOnlyList<ElementChange> Changes { get; init; } = [.. Changes];
}
