using System.Numerics;
using System.Runtime.CompilerServices;

namespace Proveout.Engine.Electrical;

/// <summary>Solves networks of admittances by LDLᵀ with the nodes in a fixed order; the pattern may change from call to call.</summary>
/// <remarks>
/// Up-looking factorisation along the elimination tree (Davis, ACM Transactions on Mathematical Software 31 (2005) 587–591). Wiring is nearly a
/// tree, so the factor is hardly fuller than the matrix and a fresh one costs some tens of microseconds. Not safe for two threads at once.
/// </remarks>
/// <typeparam name="T">Real or complex numbers.</typeparam>
internal sealed class SparseSolver<T>
    where T : struct, INumberBase<T>
{
    private readonly int[] _position;
    private readonly int[] _columnStart, _columnFill, _parent, _flag, _count, _factorStart, _pattern;
    private readonly T[] _diagonal, _pivot, _work;
    private int[] _row = [], _factorRow = [];
    private T[] _value = [], _factorValue = [];

    /// <summary>Makes a solver.</summary>
    /// <param name="position">Place of each node in the order of elimination.</param>
    public SparseSolver(int[] position)
    {
        var nodes = position.Length;
        _position = position;
        (_columnStart, _columnFill, _factorStart) = (new int[nodes + 1], new int[nodes], new int[nodes + 1]);
        (_parent, _flag, _count, _pattern) = (new int[nodes], new int[nodes], new int[nodes], new int[nodes]);
        (_diagonal, _pivot, _work) = (new T[nodes], new T[nodes], new T[nodes]);
    }

    /// <summary>Solves for the node potentials.</summary>
    /// <param name="edges">Both nodes (−1 is earth, at potential 0) and the admittance of each branch.</param>
    /// <param name="leak">Admittance from every node to earth.</param>
    /// <param name="injected">Current into each node.</param>
    /// <param name="potentials">Receives the potential of each node.</param>
    public void Solve(ReadOnlySpan<(int A, int B, T Admittance)> edges, T leak, ReadOnlySpan<T> injected, Span<T> potentials)
    {
        Gather(edges, leak);
        FindPattern();
        Factor();
        Substitute(injected, potentials);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Gather(ReadOnlySpan<(int A, int B, T Admittance)> edges, T leak)
    {
        var nodes = _position.Length;
        Array.Fill(_diagonal, leak);
        Array.Clear(_columnFill);
        foreach (var (a, b, _) in edges)
            if (a >= 0 && b >= 0)
                _columnFill[Math.Max(_position[a], _position[b])]++;
        for (var column = 0; column < nodes; column++)
            (_columnStart[column + 1], _columnFill[column]) = (_columnStart[column] + _columnFill[column], _columnStart[column]);
        if (_row.Length < _columnStart[nodes])
            (_row, _value) = (new int[_columnStart[nodes] * 2], new T[_columnStart[nodes] * 2]);
        foreach (var (a, b, admittance) in edges)
        {
            if (a >= 0)
                _diagonal[_position[a]] += admittance;
            if (b >= 0)
                _diagonal[_position[b]] += admittance;
            if (a < 0 || b < 0)
                continue;
            var (one, two) = (_position[a], _position[b]);
            var at = _columnFill[Math.Max(one, two)]++;
            (_row[at], _value[at]) = (Math.Min(one, two), -admittance);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FindPattern()
    {
        var nodes = _position.Length;
        for (var column = 0; column < nodes; column++)
        {
            (_parent[column], _flag[column], _count[column]) = (-1, column, 0);
            for (var at = _columnStart[column]; at < _columnStart[column + 1]; at++)
                for (var node = _row[at]; _flag[node] != column; node = _parent[node])
                {
                    if (_parent[node] < 0)
                        _parent[node] = column;
                    _count[node]++;
                    _flag[node] = column;
                }
        }

        for (var column = 0; column < nodes; column++)
            _factorStart[column + 1] = _factorStart[column] + _count[column];
        if (_factorRow.Length < _factorStart[nodes])
            (_factorRow, _factorValue) = (new int[_factorStart[nodes] * 2], new T[_factorStart[nodes] * 2]);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Factor()
    {
        var nodes = _position.Length;
        for (var column = 0; column < nodes; column++)
        {
            _flag[column] = column;
            _count[column] = 0;
            var top = Reach(column);
            var pivot = _diagonal[column];
            for (; top < nodes; top++)
            {
                var node = _pattern[top];
                var value = _work[node];
                _work[node] = T.Zero;
                var end = _factorStart[node] + _count[node];
                for (var at = _factorStart[node]; at < end; at++)
                    _work[_factorRow[at]] -= _factorValue[at] * value;
                var lower = value / _pivot[node];
                pivot -= lower * value;
                (_factorRow[end], _factorValue[end]) = (column, lower);
                _count[node]++;
            }

            _pivot[column] = pivot;
        }
    }

    // Nodes that the column depends on, in the order of the elimination tree; their values are scattered into the work array.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int Reach(int column)
    {
        var top = _position.Length;
        for (var at = _columnStart[column]; at < _columnStart[column + 1]; at++)
        {
            var length = 0;
            var node = _row[at];
            _work[node] += _value[at];
            for (; _flag[node] != column; node = _parent[node])
            {
                _pattern[length++] = node;
                _flag[node] = column;
            }

            while (length > 0)
                _pattern[--top] = _pattern[--length];
        }

        return top;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Substitute(ReadOnlySpan<T> injected, Span<T> potentials)
    {
        var nodes = _position.Length;
        for (var node = 0; node < nodes; node++)
            _work[_position[node]] = injected[node];
        for (var column = 0; column < nodes; column++)
            for (var at = _factorStart[column]; at < _factorStart[column] + _count[column]; at++)
                _work[_factorRow[at]] -= _factorValue[at] * _work[column];
        for (var column = nodes - 1; column >= 0; column--)
        {
            var value = _work[column] / _pivot[column];
            for (var at = _factorStart[column]; at < _factorStart[column] + _count[column]; at++)
                value -= _factorValue[at] * _work[_factorRow[at]];
            _work[column] = value;
        }

        for (var node = 0; node < nodes; node++)
            potentials[node] = _work[_position[node]];
        Array.Clear(_work);
    }
}
