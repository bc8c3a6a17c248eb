using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The open voltage of each sensor input, with the plug pulled: what its pull-up gives.</summary>
internal sealed class InputReadings : ILiveCheckRule
{
    private const double LeastVolts = 0.5;

    public IEnumerable<LiveObservation> Generate(LiveChecks checks)
    {
        var context = checks.Model.Context;
        if (checks.Unplugged is not { } stage)
            yield break;
        foreach (var (partName, connectorName) in UnpluggedStage.Plugs(context.Design))
        {
            var part = context.Design.FindPart(partName)!;
            var connector = part.Type.Connectors.First(connector => connector.Name == connectorName);
            foreach (var signal in Terminals.Of(part, TerminalRole.Signal, connector).Where(signal => Terminals.IsWired(context, signal)))
                if (Terminals.Of(part, TerminalRole.ZeroVolt, connector).Cast<TerminalReference?>().FirstOrDefault() is { } zero
                    && Reading(checks, stage, LivePlace.Pin(context, signal), LivePlace.Pin(context, zero)) is { } reading)
                    yield return reading;
        }
    }

    private static LiveObservation? Reading(LiveChecks checks, LiveStage stage, LivePlace signal, LivePlace zero)
    {
        var view = checks.Sound(checks.Resting, stage);
        return view.DirectVolts(signal.Node, zero.Node) < LeastVolts || !view.AreJoined(signal.Node, zero.Node)
            ? null
            : checks.Reading(
                signal,
                zero,
                stage,
                checks.Resting,
                VoltageBand.Direct,
                $"Red lead on {signal.Point}, black lead on {zero.Point}.",
                "The input's pull-up lifts it to its rail while nothing is plugged.");
    }
}
