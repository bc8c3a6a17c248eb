using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The current that a part draws for some milliseconds when it is switched on cold, and the way that it takes.</summary>
/// <param name="Part">Designation of the part.</param>
/// <param name="Amperes">The peak.</param>
/// <param name="Way">The elements from its supply to the part and back.</param>
internal sealed record InrushPeak(string Part, double Amperes, IReadOnlyList<NetworkElement> Way)
{
    /// <summary>The peak of every part that says one and is fed, by the supply that is found first.</summary>
    public static IEnumerable<InrushPeak> Of(ReviewContext context) =>
        from part in context.Design.Parts
        where part.Type.Ratings.Inrush is not null
        from port in PortsOf(context, part).Take(1)
        let way = port.Reach.WayTo(port.Fed).Concat(port.Reach.WayBack(port.Returned)).Select(step => step.Element)
        select new InrushPeak(part.Designation, part.Type.Ratings.Inrush!.Value.Amperes, [.. way]);

    private static IEnumerable<(SupplyReach Reach, int Fed, int Returned)> PortsOf(ReviewContext context, Part part) =>
        from ends in part.Type.Circuit.OfType<Source>().Where(source => source.Feed is not null).Select(source => (source.Feed!.A, source.Feed.B))
            .Concat(part.Type.Circuit.OfType<Consumer>().Select(consumer => (consumer.A, consumer.B)))
        let a = context.FindNode(part.Designation, ends.A)
        let b = context.FindNode(part.Designation, ends.B)
        where a is not null && b is not null
        from reach in context.SuppliesOf(a.Value, b.Value)
        select (reach, a.Value, b.Value);
}
