using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A way of finding mistakes without a meter on a dead machine: with the eye, a tug, the hand, a label, a log.</summary>
/// <param name="Name">Identifier, lower case with hyphens.</param>
/// <param name="Kind">Kind of check, of <see cref="ObservationKinds"/>.</param>
/// <param name="Title">A few words.</param>
/// <param name="Instruction">What to do, in a sentence or two.</param>
/// <param name="Good">What good looks like.</param>
/// <param name="Bad">What bad looks like.</param>
/// <param name="Criterion">The number to hold it against.</param>
/// <param name="Source">Where the criterion comes from.</param>
/// <param name="Seconds">Time that each thing takes.</param>
/// <param name="Where">The things to look at.</param>
/// <param name="Shows">Kinds of wiring mistakes that it shows too.</param>
/// <param name="Mistakes">Mistakes that it shows and no reading does.</param>
internal sealed record Observation(
    string Name,
    string Kind,
    string Title,
    string Instruction,
    string Good,
    string Bad,
    string Criterion,
    string Source,
    double Seconds,
    Func<ObservationSites, IEnumerable<Site>> Where,
    ValueList<string> Shows,
    ValueList<ObservedMistake> Mistakes)
{
    /// <summary>True when the machine must be on for it.</summary>
    public bool IsLive => Kind == ObservationKinds.Log;
}
