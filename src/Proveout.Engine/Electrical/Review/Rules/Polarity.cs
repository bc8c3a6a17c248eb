using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Plus lands on plus and zero on zero, line on line and neutral on neutral.</summary>
internal sealed class Polarity : IReviewRule
{
    public string Id => "polarity";

    public string Words => "positive and zero, line and neutral on the terminals made for them";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from part in context.Design.Parts
        let worst = SuppliesAround(context, part)
            .Select(reach => (Reach: reach, Wrong: part.Type.Terminals.Where(terminal => IsWrong(context, reach, part, terminal)).ToArray()))
            .OrderByDescending(found => found.Wrong.Length)
            .FirstOrDefault()
        where worst.Wrong is { Length: > 0 }
        let reach = worst.Reach
        let wrong = worst.Wrong.Select(terminal => $"{part.Designation}.{terminal.Name}").ToArray()
        select new Finding(
            Id,
            FindingSeverity.Error,
            [part.Designation],
            $"{PathWords.List(wrong)} of {part.Name} {(wrong.Length == 1 ? "is" : "are")} on the wrong pole of {reach.Supply.Name}{(reach.Supply.IsMains ? ": its fuse or switch is then in the neutral" : "")}.",
            "Exchange the two conductors.",
            "IEC 60204-1 clauses 4.2 and 13.1.1; roles from the part types");

    private static IEnumerable<SupplyReach> SuppliesAround(ReviewContext context, Part part) =>
        part.Type.Terminals
            .Select(terminal => context.Wiring.TerminalNode(new(part.Designation, terminal.Name)))
            .SelectMany(node => context.SuppliesAt(node).Concat(context.ReturnsAt(node)))
            .Distinct();

    private static bool IsWrong(ReviewContext context, SupplyReach reach, Part part, Terminal terminal)
    {
        var node = context.Wiring.TerminalNode(new(part.Designation, terminal.Name));
        return terminal.Role switch
        {
            TerminalRole.Positive => !reach.Supply.IsMains && reach.Returns(node) && !context.SuppliesAt(node).Any(),
            TerminalRole.ZeroVolt => !reach.Supply.IsMains && reach.Feeds(node) && !context.ReturnsAt(node).Any(),
            TerminalRole.Line => reach.Supply.IsMains && reach.Returns(node) && !reach.Feeds(node),
            TerminalRole.Neutral => reach.Supply.IsMains && reach.Feeds(node) && !reach.Returns(node),
            _ => false,
        };
    }
}
