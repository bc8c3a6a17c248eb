namespace Proveout.Engine.Electrical;

/// <summary>
/// Elements that stand in series with nothing between them that anybody looks at: the copper of a conductor, its joints, and the contacts of the plugs in which
/// it ends alone. One of them open, or with so much more resistance, is for the machine the same as any other of them.
/// </summary>
internal sealed class SeriesElements
{
    private readonly int[] _first;

    /// <summary>Finds them.</summary>
    /// <param name="wiring">The wiring.</param>
    /// <param name="ends">The nodes where branches end, with the branch; one that is an element of the wiring has its number.</param>
    /// <param name="areAlike">True when nobody looks between two branches, joined at a node where no other ends.</param>
    public SeriesElements(WiringNetwork wiring, IEnumerable<(int Node, int Branch)> ends, Func<NetworkNode, int, int, bool> areAlike)
    {
        _first = [.. Enumerable.Range(0, wiring.Elements.Count)];
        foreach (var at in ends.ToLookup(end => end.Node, end => end.Branch))
            if (at.ToArray() is [var one, var two] && IsMetal(wiring, one) && IsMetal(wiring, two) && areAlike(wiring.Nodes[at.Key], one, two))
                _first[Math.Max(Of(one), Of(two))] = Math.Min(Of(one), Of(two));
    }

    /// <summary>The same change at the first of the elements that stand in series; the change itself where nothing does.</summary>
    public ElementChange AtFirst(ElementChange change) => change switch
    {
        Cut cut => cut with { Element = Of(cut.Element) },
        AddInSeries added => added with { Element = Of(added.Element) },
        _ => change,
    };

    /// <summary>For each fault the first that is electrically the same; those that change more than one element stand for themselves.</summary>
    public int[] FirstAlike(IReadOnlyList<WiringFault> faults)
    {
        var known = new Dictionary<ElementChange, int>();
        var first = new int[faults.Count];
        for (var at = 0; at < faults.Count; at++)
            first[at] = faults[at].Changes is not [var only] || known.TryAdd(AtFirst(only), at) ? at : known[AtFirst(only)];
        return first;
    }

    private static bool IsMetal(WiringNetwork wiring, int branch) =>
        branch < wiring.Elements.Count && wiring.Elements[branch].Kind is ElementKind.Joint or ElementKind.Mating or ElementKind.Copper;

    private int Of(int element)
    {
        while (_first[element] != element)
            element = _first[element];
        return element;
    }
}
