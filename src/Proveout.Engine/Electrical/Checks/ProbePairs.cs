using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Chooses the pairs of places worth measuring in one state of the machine.</summary>
/// <remarks>
/// Within a net: every pair of a small net; of a large one, each conductor from end to end and every place from two hubs. Between nets: where
/// an element or a neighbouring terminal relates them, and every net against the protective, zero-volt and supply nets.
/// </remarks>
internal sealed class ProbePairs
{
    private const int SmallNet = 7;
    private const int MostMainNets = 6;

    private readonly WiringNetwork _wiring;
    private readonly Func<NetworkElement, bool> _conducts;
    private readonly MetalNets _nets;
    private readonly ProbePlaces _places;
    private readonly ILookup<int, int> _placesOfNet;
    private readonly MetalWalk _walk;
    private readonly HashSet<(int A, int B)> _pairs = [];

    private ProbePairs(WiringNetwork wiring, Func<NetworkElement, bool> conducts, ProbePlaces places)
    {
        _wiring = wiring;
        _conducts = conducts;
        _nets = new MetalNets(wiring, conducts);
        _places = places;
        _placesOfNet = places.Nodes.ToLookup(_nets.Of);
        _walk = new MetalWalk(wiring, conducts, places);
    }

    /// <summary>All pairs for a state at rest.</summary>
    /// <param name="wiring">The wiring.</param>
    /// <param name="conducts">Which elements carry current in this state.</param>
    /// <param name="places">The nodes that a lead can touch.</param>
    public static IReadOnlyCollection<(int A, int B)> AtRest(WiringNetwork wiring, Func<NetworkElement, bool> conducts, ProbePlaces places) =>
        new ProbePairs(wiring, conducts, places).All();

    private HashSet<(int A, int B)> All()
    {
        foreach (var places in _placesOfNet)
            WithinNet([.. places]);
        foreach (var conductor in _wiring.Design.Conductors)
            Add(_wiring.LandingNode(conductor.From), _wiring.LandingNode(conductor.To));
        AcrossElements();
        AcrossNeighbours();
        AgainstMainNets();
        return _pairs;
    }

    private void WithinNet(int[] places)
    {
        if (places.Length <= SmallNet)
        {
            for (var one = 0; one < places.Length; one++)
                for (var two = one + 1; two < places.Length; two++)
                    Add(places[one], places[two]);
            return;
        }

        var hub = places.MaxBy(place => _wiring.ElementsAt(place).Length);
        foreach (var place in places)
        {
            Add(hub, place);
            Add(Farthest(hub), place);
        }
    }

    private void AcrossElements()
    {
        foreach (var element in _wiring.Elements.Where(element => !element.IsMetal && _conducts(element)))
            foreach (var (one, two) in PlacedEnds(element))
            {
                Add(one, two);
                Add(Farthest(one), Farthest(two));
            }
    }

    // An element often ends inside its part; then the places are those beyond the neighbouring elements.
    private IEnumerable<(int A, int B)> PlacedEnds(NetworkElement element) =>
        from one in PlacesBehind(element.A, element)
        from two in PlacesBehind(element.B, element)
        select (one, two);

    private IEnumerable<int> PlacesBehind(int node, NetworkElement from)
    {
        var own = _placesOfNet[_nets.Of(node)];
        if (own.Any())
            return [Nearest(node, own)];
        return _wiring.ElementsAt(node)
            .Where(element => element.Index != from.Index && element.Subject == from.Subject && _conducts(element))
            .Select(element => _nets.Of(element.A == node ? element.B : element.A))
            .Distinct()
            .SelectMany(net => _placesOfNet[net].Take(1));
    }

    private void AcrossNeighbours()
    {
        foreach (var (a, b) in TerminalNeighbours.Pairs(_wiring.Design))
            foreach (var (one, two) in new[] { (_wiring.LandingNode(a), _wiring.LandingNode(b)), (_wiring.TerminalNode(a), _wiring.TerminalNode(b)) })
                if (_nets.Of(one) != _nets.Of(two) && _placesOfNet.Contains(_nets.Of(one)) && _placesOfNet.Contains(_nets.Of(two)))
                    Add(Farthest(_placesOfNet[_nets.Of(one)].First()), Farthest(_placesOfNet[_nets.Of(two)].First()));
    }

    private void AgainstMainNets()
    {
        var mains = _wiring.Nodes
            .Where(node => node.Kind == NodeKind.Terminal && IsMain(node))
            .Select(node => _nets.Of(node.Index))
            .Distinct()
            .Where(_placesOfNet.Contains)
            .OrderByDescending(net => _nets.Members(net).Length)
            .Take(MostMainNets)
            .ToArray();
        foreach (var main in mains)
            foreach (var net in _placesOfNet)
                if (net.Key != main && net.Count() > 1)
                    Add(Farthest(_placesOfNet[main].First()), Farthest(net.First()));
    }

    private bool IsMain(NetworkNode node) =>
        _wiring.Design.FindTerminal(new TerminalReference(node.Subject, node.Place))?.Role
            is TerminalRole.Line or TerminalRole.Neutral or TerminalRole.ProtectiveEarth or TerminalRole.Positive or TerminalRole.ZeroVolt;

    private int Nearest(int node, IEnumerable<int> placesOfNet) => _places.Holds(node) ? node : placesOfNet.First();

    private int Farthest(int place) => _walk.FarthestFrom(place);

    private void Add(int a, int b)
    {
        if (a != b && _places.Holds(a) && _places.Holds(b) && !_pairs.Contains((b, a)))
            _pairs.Add((a, b));
    }
}
