namespace Proveout.Engine.Electrical;

/// <summary>Says so when the review cannot see where mains enters, because then its rules on mains say nothing.</summary>
internal sealed class MainsInletKnown : IReviewRule
{
    public string Id => "mains-inlet-known";

    public string Words => "where mains enters";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        if (context.Design.Mains is not null && !context.Supplies.Any(reach => reach.Supply.IsMains))
            yield return new Finding(
                Id,
                FindingSeverity.Warning,
                [],
                "The machine is made for mains, but no part has free line and neutral pins to bring it in: fuses, switches and cut-offs in the mains were not reviewed.",
                "Describe the inlet as a part with a pluggable connector for the mains lead, and leave that connector without conductors.",
                "how the review works");
    }
}
