namespace Proveout.Engine.Electrical;

/// <summary>The way of a current from its supply and back.</summary>
internal static class LoadWay
{
    /// <summary>Elements on the way of a demand's current, there and back.</summary>
    public static IEnumerable<NetworkElement> Of(Demand demand) =>
        demand.Reach.WayTo(demand.Fed).Concat(demand.Reach.WayBack(demand.Returned)).Select(step => step.Element);
}
