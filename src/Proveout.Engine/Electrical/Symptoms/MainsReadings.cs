using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Line to neutral where a part with both takes mains.</summary>
internal sealed class MainsReadings : ILiveCheckRule
{
    private const double LeastVolts = 50;

    public IEnumerable<LiveObservation> Generate(LiveChecks checks)
    {
        var context = checks.Model.Context;
        foreach (var part in context.Design.Parts)
        {
            var line = Wired(context, part, TerminalRole.Line);
            var neutral = Wired(context, part, TerminalRole.Neutral);
            if (line is null || neutral is null)
                continue;
            var (red, black) = (LivePlace.Mated(context, line.Value), LivePlace.Mated(context, neutral.Value));
            if (checks.Working.FirstOrDefault(state => checks.Sound(state).AlternatingVolts(red.Node, black.Node) > LeastVolts) is { } state)
                yield return checks.Reading(
                    red,
                    black,
                    null,
                    state,
                    VoltageBand.Mains,
                    $"AC volts, mains: red lead on {red.Point}, black lead on {black.Point}.",
                    "The mains, which may lie 10 % to either side of its nominal voltage (IEC 60038).");
        }
    }

    private static TerminalReference? Wired(WiringContext context, Part part, TerminalRole role) =>
        Terminals.Of(part, role).Where(terminal => Terminals.IsWired(context, terminal)).Cast<TerminalReference?>().FirstOrDefault();
}
