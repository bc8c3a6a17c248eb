namespace Proveout.Engine.Electrical;

/// <summary>No terminal carries more than it is rated for, with everything behind it at work.</summary>
internal sealed class TerminalBearsLoad : IReviewRule
{
    public string Id => "terminal-bears-load";

    public string Words => "rated current of terminals against all loads behind them, splitters counted";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from at in context.Currents.Terminals
        let rated = context.TerminalAt(at.Node)?.Current?.Amperes
        where rated is not null && at.Flow.Amperes > rated * (1 + 1e-9)
        let node = context.Wiring.Nodes[at.Node]
        where at.Flow.Amperes > SharedWays.Of(context, at.Node, at.Flow) * rated
        let parts = at.Flow.Parts
        orderby at.Node
        select new Finding(
            Id,
            FindingSeverity.Error,
            [node.Subject, .. parts],
            $"{node} bears {ReviewContext.Number(rated.Value)} A; {PathWords.List(parts)} {(parts.Length == 1 ? "draws" : "together draw")} {ReviewContext.Number(at.Flow.Amperes, 2)} A through it.",
            "Take a part whose terminals bear the load, or feed the load by another way.",
            "ratings from the part types; IEC 60204-1 clause 4.2")
        {
            Numbers = [new("rated current", rated.Value, "A"), new("current", at.Flow.Amperes, "A")],
        };
}
