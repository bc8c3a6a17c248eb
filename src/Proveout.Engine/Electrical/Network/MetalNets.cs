using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Nodes that are the same piece of metal in one state of the machine: joined by copper, joints, closed contacts, fuses, jumpers.</summary>
internal sealed class MetalNets
{
    private readonly Islands _islands;

    public MetalNets(WiringNetwork wiring, Func<NetworkElement, bool> conducts) =>
        _islands = new Islands(
            wiring.Nodes.Count,
            wiring.Elements.Where(element => element.IsMetal && conducts(element)).Select(element => (element.A, element.B)));

    /// <summary>Number of nets.</summary>
    public int Count => _islands.Count;

    /// <summary>The net of a node.</summary>
    public int Of(int node) => _islands.Of(node);

    /// <summary>Nodes of a net.</summary>
    public int[] Members(int net) => _islands.Members(net);
}
