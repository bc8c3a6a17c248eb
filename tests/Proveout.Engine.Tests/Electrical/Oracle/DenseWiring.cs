using Proveout.Engine.Electrical;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Both limits of every reading of a faulty machine, solved densely.</summary>
internal sealed class DenseWiring(WiringNetwork wiring, FaultyWiring faulty)
{
    private readonly LoopAnalysis _low = new(wiring.Nodes.Count, faulty.Low);
    private readonly LoopAnalysis _high = new(wiring.Nodes.Count, faulty.High);
    private readonly StrayRule _strays = new(wiring, faulty.Low);

    public (double LowOhms, double HighOhms) Limits(CandidateCheck check) =>
        (_strays.Apply(_low.Reading(check.A, check.B), check.A, check.B), _high.Reading(check.A, check.B));
}
