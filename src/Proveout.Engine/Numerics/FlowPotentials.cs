namespace Proveout.Engine.Numerics;

/// <summary>Potentials of the nodes of a factored network while a current flows, found node by node as they are asked for. Reused from flow to flow by one thread.</summary>
/// <remarks>
/// Back-substitution takes a node's potential from those of its ancestors in the elimination tree alone (Liu, SIAM Journal on Matrix Analysis 11 (1990)
/// 134-172), so what a few nodes ask for costs the paths from them to the root and not the whole column.
/// </remarks>
internal sealed class FlowPotentials(LaplacianFactor factor)
{
    private readonly DoubleDouble[] _potential = new DoubleDouble[factor.NodeCount];
    private readonly int[] _knownAt = new int[factor.NodeCount];
    private readonly DoubleDouble[] _fed = new DoubleDouble[factor.NodeCount];
    private readonly int[] _fedAt = new int[factor.NodeCount];
    private readonly DoubleDouble[] _forward = new DoubleDouble[factor.Height];
    private readonly int[] _path = new int[factor.Height];
    private int _turn;

    /// <summary>Starts with one ampere fed into a node and taken from ground, in place of the flow before.</summary>
    public void Start(int node)
    {
        _turn++;
        factor.SolveForward(node, _forward);
        for (var at = node; at >= 0; at = factor.ParentOf(at))
            (_fed[at], _fedAt[at]) = (_forward[factor.DepthOf(at)], _turn);
    }

    /// <summary>Potential of a node in volts.</summary>
    public DoubleDouble this[int node]
    {
        get
        {
            var count = 0;
            for (var at = node; at >= 0 && _knownAt[at] != _turn; at = factor.ParentOf(at))
                _path[count++] = at;
            while (count > 0)
                Solve(_path[--count]);
            return _potential[node];
        }
    }

    private void Solve(int node)
    {
        var value = _fedAt[node] == _turn ? _fed[node] * factor.ReciprocalOf(node) : DoubleDouble.Zero;
        var (later, multipliers) = factor.LaterThan(node);
        for (var index = 0; index < later.Length; index++)
            value += multipliers[index] * _potential[later[index]];
        (_potential[node], _knownAt[node]) = (value, _turn);
    }
}
