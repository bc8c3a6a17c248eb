namespace Proveout.Engine.Electrical;

/// <summary>The fuse before a load is no smaller than the load's current.</summary>
internal sealed class FuseBearsLoad : IReviewRule
{
    public string Id => "fuse-bears-load";

    public string Words => "fuse before a load no smaller than the load's current";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from load in context.Loads
        let amperes = load.Reach.AmperesAt(load.Fed)
        where load.NominalAmperes > amperes
        select new Finding(
            Id,
            FindingSeverity.Error,
            [load.Element.Subject],
            $"{load.Element.Subject} takes {ReviewContext.Number(load.NominalAmperes)} A from {load.Reach.Supply.Name}; the way to it bears {ReviewContext.Number(amperes)} A.",
            "Take a larger fuse and a conductor that bears it, or a load of higher resistance.",
            "IEC 60364-4-43 clause 433.1 (Ib ≤ In)");
}
