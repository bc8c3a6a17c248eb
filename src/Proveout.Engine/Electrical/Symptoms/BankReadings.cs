using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The positive pin of each switched output to zero volt with the plug pulled: which voltage its jumper gives.</summary>
internal sealed class BankReadings : ILiveCheckRule
{
    private const double LeastVolts = 0.5;

    public IEnumerable<LiveObservation> Generate(LiveChecks checks)
    {
        var context = checks.Model.Context;
        if (checks.Unplugged is not { } stage)
            yield break;
        foreach (var (part, _, positive, _) in OutputReadings.Outputs(context))
        {
            if (part.Type.ConnectorOf(positive.Terminal) is not { Pluggable: true } || Zero(context, part) is not { } zero)
                continue;
            var pin = LivePlace.Pin(context, positive);
            var view = checks.Sound(checks.Resting, stage);
            if (view.DirectVolts(pin.Node, zero.Node) > LeastVolts && view.AreJoined(pin.Node, zero.Node))
                yield return checks.Reading(
                    pin,
                    zero,
                    stage,
                    checks.Resting,
                    VoltageBand.Direct,
                    $"Red lead on {pin.Point}, black lead on {zero.Point}.",
                    "The jumper of the bank, or the supply of the output, decides it.");
        }
    }

    private static LivePlace? Zero(WiringContext context, Part part) =>
        Terminals.Of(part, TerminalRole.ZeroVolt)
            .Where(terminal => Terminals.IsWired(context, terminal))
            .OrderBy(terminal => part.Type.ConnectorOf(terminal.Terminal) is { Pluggable: true })
            .Select(terminal => LivePlace.Mated(context, terminal))
            .FirstOrDefault();
}
