namespace Proveout.Engine.Electrical;

/// <summary>A part is bonded by a conductor of its own, so that taking another part out leaves it bonded.</summary>
internal sealed class BondInChain : IReviewRule
{
    public string Id => "bond-in-chain";

    public string Words => "each part bonded by its own conductor, not through another part";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var nets = new ProtectiveNets(context);
        if (!nets.HasEntry)
            return [];
        var carriers = context.Design.Parts.Where(part => part.Type.ExposedConductivePart).ToArray();
        return
            from part in carriers
            from other in nets.BondedThrough(part)
            select new Finding(
                Id,
                FindingSeverity.Note,
                [part.Designation, other],
                $"{other} is bonded through {part.Designation} ({part.Name}): whoever takes {part.Designation} out takes the bond of {other} away.",
                "Bond each part to the earth bar by a conductor of its own.",
                "IEC 60204-1 clause 8.2.3");
    }
}
