using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Positive to zero volt wherever a supply or a rail arrives.</summary>
internal sealed class SupplyReadings : ILiveCheckRule
{
    private const double LeastVolts = 0.5;

    public IEnumerable<LiveObservation> Generate(LiveChecks checks)
    {
        var context = checks.Model.Context;
        foreach (var part in context.Design.Parts)
            foreach (var positive in Positives(context, part))
                if (Terminals.ZeroOf(context.Design, part, positive.Terminal) is { } zero
                    && Reading(checks, LivePlace.Mated(context, positive), LivePlace.Mated(context, zero)) is { } reading)
                    yield return reading;
    }

    // One of each connector and net: terminals in parallel tell the same.
    private static IEnumerable<TerminalReference> Positives(WiringContext context, Part part) =>
        Terminals.Of(part, TerminalRole.Positive)
            .Where(terminal => Terminals.IsWired(context, terminal))
            .DistinctBy(terminal => (part.Type.ConnectorOf(terminal.Terminal)?.Name ?? terminal.Terminal, Rail(terminal.Terminal)));

    // Poles that a part marks with a number behind the sign are in parallel.
    private static string Rail(string terminal) => terminal.Contains('+', StringComparison.Ordinal) ? terminal[..(terminal.IndexOf('+', StringComparison.Ordinal) + 1)] : terminal;

    private static LiveObservation? Reading(LiveChecks checks, LivePlace positive, LivePlace zero)
    {
        var state = checks.Working.FirstOrDefault(state =>
            checks.Sound(state) is var view && view.DirectVolts(positive.Node, zero.Node) > LeastVolts && view.AreJoined(positive.Node, zero.Node));
        return state is null
            ? null
            : checks.Reading(
                positive,
                zero,
                null,
                state,
                VoltageBand.Direct,
                $"Red lead on {positive.Point}, black lead on {zero.Point}; at a plug from behind, at its contacts.",
                "The supply of this place, less what is lost on the way.");
    }
}
