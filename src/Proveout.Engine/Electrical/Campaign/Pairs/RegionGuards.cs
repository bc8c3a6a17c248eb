namespace Proveout.Engine.Electrical;

/// <summary>Holds the verdicts of diode tests by all that hangs together with a lead through resistances, junctions or insulation. One thread's own.</summary>
/// <remarks>Where nothing of that changes, the reading is what it was: no current leads anywhere else.</remarks>
internal sealed class RegionGuards : IPairGuards
{
    private readonly PairDiodes _table;
    private readonly GuardGraph _graph;
    private readonly Dictionary<int, List<int>> _strays = [];
    private readonly Dictionary<int, int[]> _faultsOfRegion = [];
    private readonly int[] _regionOf;

    public RegionGuards(PairDiodes table)
    {
        _table = table;
        _graph = new GuardGraph(table.Resistances.Low);
        _regionOf = new int[table.Resistances.Low.Network.NodeCount];
        var strays = table.Resistances.Table.Rest.StrayPaths;
        foreach (var (a, b) in strays.Junctions.Select(item => (item.Anode, item.Cathode)).Concat(strays.Insulation.Select(item => (item.A, item.B))))
        {
            (_strays.TryGetValue(a, out var fromA) ? fromA : _strays[a] = []).Add(b);
            (_strays.TryGetValue(b, out var fromB) ? fromB : _strays[b] = []).Add(a);
        }
    }

    /// <inheritdoc/>
    public void Apply(int[] faults)
    {
        _graph.Apply([.. faults.SelectMany(fault => _table.Resistances.Low.ChangesOf(fault))]);
        _faultsOfRegion.Clear();
        Array.Fill(_regionOf, -1);
    }

    /// <inheritdoc/>
    public bool TryAddOverturning(int index, bool isCaught, bool thoroughly, List<int> faults)
    {
        faults.AddRange(FaultsAround(_table.Table.Candidates[index].A));
        faults.AddRange(FaultsAround(_table.Table.Candidates[index].B));
        return true;
    }

    private int[] FaultsAround(int node)
    {
        if (_regionOf[node] >= 0)
            return _faultsOfRegion[_regionOf[node]];
        var faults = new HashSet<int>();
        var queue = new Queue<int>();
        Reach(node);
        while (queue.TryDequeue(out var at))
        {
            faults.UnionWith(_table.Places.At(at));
            foreach (var (_, other, _) in _graph.StepsFrom(at))
                Reach(other);
            if (_strays.TryGetValue(at, out var others))
                others.ForEach(Reach);
        }

        return _faultsOfRegion[node] = [.. faults];

        void Reach(int other)
        {
            if (_regionOf[other] >= 0)
                return;
            _regionOf[other] = node;
            queue.Enqueue(other);
        }
    }
}
