namespace Proveout.Workshop;

/// <summary>The walk round a machine: what eye, tug, hand, label and log should find.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Places">Place by place, what is done dead first.</param>
/// <param name="Observed">How many mistakes only the walk shows, because no current tells of them.</param>
/// <param name="Uncaught">How many mistakes in the wiring no dead reading surely catches.</param>
/// <param name="Shown">How many of those the walk shows.</param>
public sealed record WalkView(MachineSummary Machine, IReadOnlyList<WalkPlace> Places, int Observed, int Uncaught, int Shown)
{
    /// <summary>What the walk covers, in a sentence.</summary>
    public string Coverage => FormattableString.Invariant(
        $"It shows {Observed} mistakes that no current tells of, and {Shown} of the {Uncaught} mistakes in the wiring that no dead reading surely catches. Eyes and hands are not sure: this is where to look, no proof.");
}
