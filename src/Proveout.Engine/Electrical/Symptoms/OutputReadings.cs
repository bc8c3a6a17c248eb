using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Both pins of each switched output: on with its load plugged, on with the plug pulled, off with a load that keeps them together.</summary>
internal sealed class OutputReadings : ILiveCheckRule
{
    private const double LeastVolts = 0.5;

    // Only a load below about a hundred ohm holds an off output at nothing against the leakage of its transistor.
    private const double LeastAmperes = 0.2;

    public IEnumerable<LiveObservation> Generate(LiveChecks checks)
    {
        var context = checks.Model.Context;
        foreach (var (part, path, positive, negative) in Outputs(context))
        {
            var state = checks.Working.First(state => state.Commands.Any(command => command == (part.Designation, path.Command)));
            var (plus, minus) = (LivePlace.Mated(context, positive), LivePlace.Mated(context, negative));
            yield return checks.Reading(
                plus, minus, null, state, VoltageBand.Direct, Instruction(plus, minus, "With its load plugged"), "The output is on and gives its load the voltage of its bank.");
            if (IsHeld(checks, part, path, state))
                yield return checks.Reading(
                    plus, minus, null, checks.Resting, VoltageBand.Direct, Instruction(plus, minus, "With its load plugged"), "The output is off: its load holds both pins together.");
            if (checks.Unplugged is not { } stage || part.Type.ConnectorOf(positive.Terminal) is not { Pluggable: true })
                continue;
            var (plusPin, minusPin) = (LivePlace.Pin(context, positive), LivePlace.Pin(context, negative));
            if (checks.Sound(checks.Everything, stage).DirectVolts(plusPin.Node, minusPin.Node) > LeastVolts)
                yield return checks.Reading(
                    plusPin, minusPin, stage, checks.Everything, VoltageBand.Direct, Instruction(plusPin, minusPin, "With its plug pulled"), "The output is on and shows the voltage of its bank.");
        }
    }

    /// <summary>Switched outputs that something is wired to, with both their terminals.</summary>
    public static IEnumerable<(Part Part, SwitchedPath Path, TerminalReference Positive, TerminalReference Negative)> Outputs(WiringContext context) =>
        from part in context.Design.Parts
        from path in part.Type.Circuit.OfType<SwitchedPath>()
        where path.Command.Length > 0
        let connector = part.Type.ConnectorOf(path.A)
        where connector is { Terminals.Count: 2 }
        let positive = new TerminalReference(part.Designation, connector.Terminals.First(name => name != path.A))
        let negative = new TerminalReference(part.Designation, path.A)
        where Terminals.IsWired(context, positive) && Terminals.IsWired(context, negative)
        where Terminals.Of(part, TerminalRole.Output, connector).Count() == 2
        select (part, path, positive, negative);

    private static bool IsHeld(LiveChecks checks, Part part, SwitchedPath path, ControlState on)
    {
        var branch = checks.Model.Circuit.Branches.First(branch => branch.Subject == part.Designation && branch.Element == path);
        return Math.Abs(checks.Sound(on).Solution.DcAmperes(branch.Index)) > LeastAmperes;
    }

    private static string Instruction(LivePlace plus, LivePlace minus, string with) =>
        $"{with}: red lead on {plus.Point}, black lead on {minus.Point}; at a plug from behind, at its contacts.";
}
