namespace Proveout.Engine.Electrical;

/// <summary>A way through the wiring from one lead to the other.</summary>
/// <param name="Elements">The elements in order.</param>
/// <param name="Nodes">The nodes in order, one more than the elements.</param>
internal sealed record ReadingPath(IReadOnlyList<NetworkElement> Elements, IReadOnlyList<int> Nodes)
{
    /// <summary>True when nothing but metal lies on the way.</summary>
    public bool IsMetal => Elements.All(element => element.IsMetal);

    /// <summary>True when it passes insulation, which carries no current to speak of.</summary>
    public bool PassesInsulation => Elements.Any(PathSearch.IsInsulation);

    /// <summary>True when it passes a junction.</summary>
    public bool PassesJunction => Elements.Any(PathSearch.IsJunction);

    /// <summary>Resistance to expect along the way in ohms, junctions and insulation left out.</summary>
    public double NominalOhms => Elements.Where(element => double.IsFinite(element.NominalOhms)).Sum(element => element.NominalOhms);

    /// <summary>The junctions that the current would meet at their cathode, so that they block it.</summary>
    public IEnumerable<NetworkElement> Blocking =>
        Elements.Where((element, index) => PathSearch.IsJunction(element) && element.A != Nodes[index]);
}
