using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The fuse before loads is no smaller than their current: of each, and of all together.</summary>
internal sealed class FuseBearsLoad : IReviewRule
{
    private const string Source = "IEC 60364-4-43 clause 433.1 (Ib ≤ In)";

    public string Id => "fuse-bears-load";

    public string Words => "fuse before loads no smaller than their current together";

    public IEnumerable<Finding> Review(ReviewContext context) => OfOne(context).Concat(OfSeveral(context));

    private IEnumerable<Finding> OfOne(ReviewContext context) =>
        from load in context.Loads
        let amperes = load.Reach.AmperesAt(load.Fed)
        where load.NominalAmperes > amperes
        select new Finding(
            Id,
            FindingSeverity.Error,
            [load.Element.Subject],
            $"{load.Element.Subject} takes {ReviewContext.Number(load.NominalAmperes)} A from {load.Reach.Supply.Name}; the way to it bears {ReviewContext.Number(amperes)} A.",
            "Take a larger fuse and a conductor that bears it, or a load of higher resistance.",
            Source)
        {
            Numbers = [new("current", load.NominalAmperes, "A"), new("fuse", amperes, "A")],
        };

    private IEnumerable<Finding> OfSeveral(ReviewContext context) =>
        from element in context.Wiring.Elements
        let rating = element.Part is Fuse { Rating: { } rated } ? rated.Amperes : double.PositiveInfinity
        let flow = context.Currents.In(element)
        where flow is not null && flow.Amperes > rating * (1 + 1e-9) && !context.Loads.Any(load => flow.Parts.Contains(load.Element.Subject) && load.NominalAmperes > rating)
        select new Finding(
            Id,
            FindingSeverity.Error,
            [element.Subject, .. flow.Parts],
            $"{PathWords.Plain(element)} is rated {ReviewContext.Number(rating)} A; {PathWords.List(flow.Parts)} take {ReviewContext.Number(flow.Amperes, 2)} A through it when all are at work.",
            "Share the loads between branches, or take a larger fuse and conductors that bear it.",
            Source)
        {
            Numbers = [new("current", flow.Amperes, "A"), new("fuse", rating, "A")],
        };
}
