namespace Proveout.Engine.Electrical;

/// <summary>
/// Elements that stand in series with nothing between them that anybody looks at: the copper of a conductor, its joints, and the contacts of the plugs in which
/// it ends alone. One of them open, or with so much more resistance, is for the machine the same as any other of them.
/// </summary>
internal sealed class SeriesElements
{
    private readonly int[] _first;

    public SeriesElements(LiveModel model)
    {
        var wiring = model.Context.Wiring;
        _first = [.. Enumerable.Range(0, wiring.Elements.Count)];
        var branches = new List<int>[wiring.Nodes.Count];
        foreach (var branch in model.Circuit.Branches)
            foreach (var node in (ReadOnlySpan<int>)[branch.A, branch.B])
                if (node >= 0 && node < branches.Length)
                    (branches[node] ??= []).Add(branch.Index);
        foreach (var node in wiring.Nodes)
            if (node.Kind is NodeKind.ConductorEnd or NodeKind.PlugContact && branches[node.Index] is [var one, var two]
                && IsMetal(wiring, one) && IsMetal(wiring, two) && MissingProtection.IsProtective(model, one) == MissingProtection.IsProtective(model, two))
                _first[Math.Max(Of(one), Of(two))] = Math.Min(Of(one), Of(two));
    }

    /// <summary>The same change at the first of the elements that stand in series; the change itself where nothing does.</summary>
    public ElementChange AtFirst(ElementChange change) => change switch
    {
        Cut cut => cut with { Element = Of(cut.Element) },
        AddInSeries added => added with { Element = Of(added.Element) },
        _ => change,
    };

    private static bool IsMetal(WiringNetwork wiring, int branch) =>
        branch < wiring.Elements.Count && wiring.Elements[branch].Kind is ElementKind.Joint or ElementKind.Mating or ElementKind.Copper;

    private int Of(int element)
    {
        while (_first[element] != element)
            element = _first[element];
        return element;
    }
}
