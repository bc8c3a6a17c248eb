using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What is lost between a supply and each board, in the positive and in the zero volt lead, with every output on.</summary>
internal sealed class DropReadings : ILiveCheckRule
{
    private const double SameSupply = 0.85;
    private const double LeastVolts = 1;

    // What goes on to a sensor leaves the board; what feeds the board enters it.
    private const double LeastAmperes = 0.05;

    public IEnumerable<LiveObservation> Generate(LiveChecks checks)
    {
        var context = checks.Model.Context;
        var view = checks.Sound(checks.Everything);
        var done = new HashSet<(int Red, int Black)>();
        foreach (var part in context.Design.Parts.Where(part => part.Type.ClassLetter == "A"))
            foreach (var positive in Terminals.Of(part, TerminalRole.Positive).Where(terminal => Terminals.IsWired(context, terminal)))
            {
                if (Terminals.Of(part, TerminalRole.ZeroVolt, part.Type.ConnectorOf(positive.Terminal)).Cast<TerminalReference?>().FirstOrDefault() is not { } zero
                    || !Terminals.IsWired(context, zero))
                    continue;
                if (AmperesInto(context, view, positive) < LeastAmperes)
                    continue;
                var (plus, minus) = (LivePlace.Mated(context, positive), LivePlace.Mated(context, zero));
                foreach (var (source, back) in Supplies(context))
                    if (source.Point.Subject != part.Designation && IsFedBy(view, plus, minus, source, back))
                    {
                        if (done.Add((source.Node, plus.Node)))
                            yield return Reading(checks, source, plus, "positive");
                        if (done.Add((minus.Node, back.Node)))
                            yield return Reading(checks, minus, back, "zero volt");
                    }
            }
    }

    private static double AmperesInto(WiringContext context, LiveView view, TerminalReference terminal) =>
        context.ConductorsAt(terminal).Sum(conductor => view.Solution.DcAmperes(context.JointOf(conductor, terminal).Index));

    private static IEnumerable<(LivePlace Positive, LivePlace Negative)> Supplies(WiringContext context) =>
        Terminals.Supplies(context.Design).Select(supply => (LivePlace.Mated(context, supply.Positive), LivePlace.Mated(context, supply.Negative)));

    // Of one supply when only a little is lost on the way.
    private static bool IsFedBy(LiveView view, LivePlace plus, LivePlace minus, LivePlace source, LivePlace back)
    {
        var (here, there) = (view.DirectVolts(plus.Node, minus.Node), view.DirectVolts(source.Node, back.Node));
        return there > LeastVolts
            && here > SameSupply * there
            && Math.Abs(view.DirectVolts(source.Node, plus.Node)) < (1 - SameSupply) * there
            && Math.Abs(view.DirectVolts(minus.Node, back.Node)) < (1 - SameSupply) * there;
    }

    private static LiveObservation Reading(LiveChecks checks, LivePlace red, LivePlace black, string lead) => checks.Reading(
        red,
        black,
        null,
        checks.Everything,
        VoltageBand.Drop,
        $"Red lead on {red.Point}, black lead on {black.Point}, with every output on: what the {lead} lead loses.",
        "Current times the resistance of conductors and joints on the way.");
}
