using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>One switch opens line and neutral to everything that mains feeds.</summary>
internal sealed class MainSwitchTwoPole : IReviewRule
{
    public string Id => "main-switch-two-pole";

    public string Words => "a main switch that opens line and neutral";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        foreach (var mains in context.Supplies.Where(reach => reach.Supply.IsMains))
        {
            int[] fed = [.. Consumers(context).Where(mains.Feeds)];
            int[] returned = [.. Consumers(context).Where(mains.Returns)];
            if (fed.Length > 0 && !Controls(context, mains, fed[0]).Any(control => Cuts(context, mains.Supply.Plus, fed, control) && Cuts(context, mains.Supply.Zero, returned, control)))
                yield return new Finding(
                    Id,
                    FindingSeverity.Warning,
                    [.. context.Design.Parts.Where(part => fed.Any(node => context.Wiring.Nodes[node].Subject == part.Designation)).Select(part => part.Designation)],
                    $"No switch opens both line and neutral of {mains.Supply.Name} to everything behind: a plug that can be turned round may leave the line closed.",
                    "Fit a two-pole main switch right behind the inlet; until then the plug is the only isolator and stays within reach.",
                    "IEC 60204-1 clause 5.3");
        }
    }

    // What consumes mains: no strip, switch, fuse or lamp.
    private static IEnumerable<int> Consumers(ReviewContext context) =>
        from part in context.Design.Parts
        where part.Type.ClassLetter is not ("X" or "S" or "F" or "Q" or "K" or "P" or "U")
        from terminal in part.Type.Terminals
        where terminal.Role is TerminalRole.Line or TerminalRole.Neutral
        select context.Wiring.TerminalNode(new TerminalReference(part.Designation, terminal.Name));

    // What cuts all cuts the way to the first.
    private static IEnumerable<(string Part, string Control)> Controls(ReviewContext context, SupplyReach mains, int first) =>
        from part in mains.WayTo(first).Where(step => step.Element.Part is Contact).Select(step => context.PartOf(step.Element)).Distinct()
        from control in part.Type.Controls
        select (part.Designation, control.Name);

    private static bool Cuts(ReviewContext context, int from, int[] nodes, (string Part, string Control) control)
    {
        var left = context.JoinedTo(
            from,
            element => element.Part is Contact contact && element.Subject == control.Part && contact.Control == control.Control);
        return !nodes.Any(left.Contains);
    }
}
