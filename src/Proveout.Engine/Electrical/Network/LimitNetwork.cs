using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The wiring network with every resistance at one of its limits.</summary>
internal sealed class LimitNetwork
{
    private readonly int[] _edgeOf;

    /// <summary>Makes the network of the elements with a conductance above zero.</summary>
    /// <param name="wiring">The wiring.</param>
    /// <param name="conductanceSiemens">Conductance of each element.</param>
    /// <param name="likewise">The same at another limit, where it is made already.</param>
    public LimitNetwork(WiringNetwork wiring, Func<NetworkElement, double> conductanceSiemens, LimitNetwork? likewise = null)
    {
        _edgeOf = new int[wiring.Elements.Count];
        var edges = new List<Edge>(wiring.Elements.Count);
        foreach (var element in wiring.Elements)
        {
            var conductance = conductanceSiemens(element);
            _edgeOf[element.Index] = conductance > 0 && element.A != element.B ? edges.Count : -1;
            if (_edgeOf[element.Index] >= 0)
                edges.Add(new Edge(element.A, element.B, conductance));
        }

        Network = new ResistorNetwork(wiring.Nodes.Count, [.. edges], likewise?.Network);
    }

    /// <summary>The network of resistors.</summary>
    public ResistorNetwork Network { get; }

    /// <summary>Index in <see cref="Network"/> of an element's edge; -1 when it does not conduct.</summary>
    public int EdgeOf(int element) => _edgeOf[element];
}
