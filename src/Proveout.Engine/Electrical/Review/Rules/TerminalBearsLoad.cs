using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>No terminal on a load's way carries more than it is rated for.</summary>
internal sealed class TerminalBearsLoad : IReviewRule
{
    public string Id => "terminal-bears-load";

    public string Words => "rated current of terminals against the loads behind them";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from load in context.Loads
        from node in LoadWay.Of(context, load).Nodes.Distinct().Select(index => context.Wiring.Nodes[index])
        where node.Kind == NodeKind.Terminal
        let rated = context.Design.FindTerminal(new TerminalReference(node.Subject, node.Place))!.Current
        where rated is not null && load.NominalAmperes > rated.Value.Amperes
        select new Finding(
            Id,
            FindingSeverity.Error,
            [node.Subject, load.Element.Subject],
            $"{node} bears {ReviewContext.Number(rated.Value.Amperes)} A; {load.Element.Subject} draws {ReviewContext.Number(load.NominalAmperes)} A through it.",
            "Take a part whose terminals bear the load, or feed the load by another way.",
            "ratings from the part types; IEC 60204-1 clause 4.2");
}
