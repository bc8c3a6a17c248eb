using Proveout.Engine.Electrical;

namespace Proveout.Workshop;

/// <summary>What lies on the electrical island of each node in one set-up: everything that current could reach from there, junctions and insulation included.</summary>
internal sealed class MeasuredIslands
{
    private readonly int[] _island;
    private readonly ILookup<int, MeasuredElement> _elements;

    /// <summary>Finds the islands.</summary>
    /// <param name="campaign">The campaign of the machine.</param>
    /// <param name="setUp">Index of the set-up.</param>
    /// <param name="renamed">New identifiers of conductors by their old ones.</param>
    public MeasuredIslands(WiringCampaign campaign, int setUp, IReadOnlyDictionary<string, string> renamed)
    {
        var wiring = campaign.Context.Wiring;
        var open = campaign.OpenElementsOf(setUp).ToHashSet();
        var closed = wiring.Elements.Where(element => !open.Contains(element.Index)).ToArray();
        _island = [.. Enumerable.Range(0, wiring.Nodes.Count)];
        foreach (var element in closed)
            _island[RootOf(element.A)] = RootOf(element.B);
        _elements = closed.ToLookup(element => RootOf(element.A), element => MeasuredElement.Of(wiring, element, renamed));
    }

    /// <summary>Everything on the islands of the two leads.</summary>
    public HashSet<MeasuredElement> Between(int red, int black) => [.. _elements[RootOf(red)], .. _elements[RootOf(black)]];

    private int RootOf(int node)
    {
        while (_island[node] != node)
            node = _island[node] = _island[_island[node]];
        return node;
    }
}
