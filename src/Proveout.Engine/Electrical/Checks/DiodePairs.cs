using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Chooses the pairs of places where a junction may decide what a diode test shows: at the poles of polarised parts and across junctions.</summary>
internal sealed class DiodePairs
{
    private readonly WiringContext _context;
    private readonly MetalNets _nets;
    private readonly ILookup<int, int> _placesOfNet;
    private readonly HashSet<int> _places;

    public DiodePairs(WiringContext context, StateNetwork state, IReadOnlyList<int> places)
    {
        _context = context;
        _nets = new MetalNets(context.Wiring, state.Conducts);
        _placesOfNet = places.ToLookup(_nets.Of);
        _places = [.. places];
    }

    /// <summary>The pairs, each net against another once, in a fixed order.</summary>
    public IEnumerable<(int A, int B)> All() =>
        PolarisedPoles().Concat(AcrossJunctions())
            .Where(pair => _nets.Of(pair.A) != _nets.Of(pair.B))
            .DistinctBy(pair => (Math.Min(_nets.Of(pair.A), _nets.Of(pair.B)), Math.Max(_nets.Of(pair.A), _nets.Of(pair.B))));

    // Where a conductor lands: with plugs apart that is the plug, for what is behind bare pins no builder can have miswired.
    private IEnumerable<(int A, int B)> PolarisedPoles() =>
        from pair in _context.Neighbours
        where PolarisedParts.IsPolarisedPair(_context.Design, pair.A, pair.B)
        where _context.ConductorsAt(pair.A).Any() && _context.ConductorsAt(pair.B).Any()
        let ends = (A: _context.Wiring.LandingNode(pair.A), B: _context.Wiring.LandingNode(pair.B))
        where _places.Contains(ends.A) && _places.Contains(ends.B)
        select ends;

    // The outputs of boards: a switch to zero volt with its body diode, on a connector of two.
    private IEnumerable<(int A, int B)> AcrossJunctions() =>
        from element in _context.Wiring.Elements
        where element.Part is Diode && (IsOnePole(element.A) || IsOnePole(element.B))
        where IsWired(element.A) && IsWired(element.B)
        select (PlaceOn(element.Subject, element.A), PlaceOn(element.Subject, element.B));

    private bool IsOnePole(int node) =>
        _context.Wiring.Nodes[node] is { Kind: NodeKind.Terminal } at
        && _context.Design.FindPart(at.Subject)!.Type.ConnectorOf(at.Place) is { Terminals.Count: 2 };

    private bool IsWired(int node) => _placesOfNet.Contains(_nets.Of(node)) && _nets.Members(_nets.Of(node)).Any(IsConductorEnd);

    private int PlaceOn(string part, int node)
    {
        var places = _placesOfNet[_nets.Of(node)];
        return places.Cast<int?>().FirstOrDefault(place => _context.Wiring.Nodes[place!.Value].Subject == part) ?? places.First();
    }

    private bool IsConductorEnd(int node) => _context.Wiring.Nodes[node].Kind == NodeKind.ConductorEnd;
}
