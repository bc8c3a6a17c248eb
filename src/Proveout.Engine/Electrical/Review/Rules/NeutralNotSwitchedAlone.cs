using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>No switch or fuse opens the neutral without opening the line with it.</summary>
internal sealed class NeutralNotSwitchedAlone : IReviewRule
{
    public string Id => "neutral-not-switched-alone";

    public string Words => "no switch or fuse in the neutral alone";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from part in context.Design.Parts
        let inNeutral = Opening(context, part, isLine: false).ToArray()
        where inNeutral.Length > 0
        let inLine = Opening(context, part, isLine: true).Select(element => (element as Contact)?.Control).ToHashSet()
        from element in inNeutral
        where element is not Contact contact || !inLine.Contains(contact.Control)
        select new Finding(
            Id,
            FindingSeverity.Error,
            [part.Designation],
            $"{element.Name} of {part.Designation} ({part.Name}) opens the neutral and leaves the line closed: what is behind it stays at line voltage while off.",
            "Put it into the line, or open both poles together.",
            "IEC 60364-4-46 clause 461.2; IEC 60204-1 clause 5.3.3");

    private static IEnumerable<CircuitElement> Opening(ReviewContext context, Part part, bool isLine) =>
        from element in part.Type.Circuit
        where element is Contact or Fuse or SwitchedPath
        let a = context.Wiring.PartNode(part.Designation, element.A)
        let b = context.Wiring.PartNode(part.Designation, element.B)
        where context.Supplies.Any(reach => reach.Supply.IsMains && (isLine ? reach.Feeds(a) && reach.Feeds(b) : reach.Returns(a) && reach.Returns(b)))
        select element;
}
