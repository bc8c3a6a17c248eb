using System.Numerics;
using System.Runtime.CompilerServices;

namespace Proveout.Engine.Electrical;

/// <summary>Solves networks of admittances by LDLᵀ with the nodes in a fixed order; what changes from call to call is factored anew, the rest stays.</summary>
/// <remarks>
/// Up-looking factorisation along the elimination tree (Davis, ACM Transactions on Mathematical Software 31 (2005) 587–591). A row of the factor
/// depends on the rows below it in the tree only, so a changed branch alters the rows on the way from its ends to the root and no other. They are
/// computed from the admittances, not updated, so no error builds up however often things switch. New contacts join these ways (<see cref="JoinBlock{T}"/>).
/// Not safe for two threads at once.
/// </remarks>
/// <typeparam name="T">Real or complex numbers.</typeparam>
internal sealed class SparseSolver<T>
    where T : struct, INumberBase<T>
{
    private readonly SparsePattern _pattern;
    private readonly JoinBlock<T> _block;
    private readonly T[] _pivot, _inversePivot, _work, _values, _admittance, _factor;
    private readonly int[] _all;
    private readonly bool[] _stale;
    private readonly T _leak;

    /// <summary>Makes a solver.</summary>
    /// <param name="pattern">The network; at first nothing in it conducts.</param>
    /// <param name="leak">Admittance from every node to earth.</param>
    public SparseSolver(SparsePattern pattern, T leak)
    {
        (_pattern, _leak, _block) = (pattern, leak, new JoinBlock<T>(pattern));
        var nodes = pattern.Position.Length;
        (_pivot, _inversePivot, _work, _values, _stale) = (new T[nodes], new T[nodes], new T[nodes], new T[nodes], new bool[nodes]);
        (_admittance, _factor) = (new T[pattern.One.Length], new T[pattern.FactorLength]);
        _all = [.. Enumerable.Range(0, nodes).Reverse()];
        Array.Fill(_stale, true);
    }

    /// <summary>The contacts that no branch of the pattern makes.</summary>
    public (int A, int B, double Siemens)[] Joins => _block.Joins;

    /// <summary>True when what conducts has changed since potentials were last solved for.</summary>
    public bool IsStale => _stale.AsSpan().Contains(true);

    /// <summary>Gives a branch an admittance, zero when it does not conduct; it stays until another is given.</summary>
    /// <param name="branch">Number of the branch in the pattern.</param>
    /// <param name="admittance">The admittance.</param>
    public void Set(int branch, T admittance)
    {
        if (_admittance[branch] == admittance)
            return;
        _admittance[branch] = admittance;
        // The other end is on the way from the end that is eliminated first to the root.
        for (var row = _pattern.One[branch] is >= 0 and var first ? first : _pattern.Two[branch]; row >= 0 && !_stale[row]; row = _pattern.Parent[row])
            _stale[row] = true;
    }

    /// <summary>Puts contacts between nodes that no branch of the pattern joins, in the place of those of before.</summary>
    /// <param name="joins">The same list again means the same contacts.</param>
    public void Join((int A, int B, double Siemens)[] joins)
    {
        if (_block.IsOf(joins))
            return;
        foreach (var row in _block.Rows)
            _stale[row] = true;
        _block.Take(joins);
        foreach (var row in _block.Rows)
            _stale[row] = true;
    }

    /// <summary>Solves for the potentials of all nodes.</summary>
    /// <param name="injected">Current into each node.</param>
    /// <param name="potentials">Receives the potential of each node.</param>
    public void Solve(ReadOnlySpan<T> injected, Span<T> potentials) => Solve(injected, _all, _all, potentials);

    /// <summary>Solves for the potentials of some nodes.</summary>
    /// <param name="injected">Current into each node.</param>
    /// <param name="fed">Places of the nodes into which a current may flow, from <see cref="SparsePattern.Above"/>.</param>
    /// <param name="asked">Their places, from <see cref="SparsePattern.Above"/>.</param>
    /// <param name="potentials">Receives their potentials; those of the others stay.</param>
    public void Solve(ReadOnlySpan<T> injected, int[] fed, int[] asked, Span<T> potentials)
    {
        var firstJoined = int.MaxValue;
        for (var row = _stale.AsSpan().IndexOf(true); row >= 0;)
        {
            _stale[row] = false;
            FactorRow(row);
            if (_block.Place[row] is >= 0 and var place)
                firstJoined = Math.Min(firstJoined, place);
            var further = _stale.AsSpan(row + 1).IndexOf(true);
            row = further < 0 ? -1 : row + 1 + further;
        }

        _block.Factor(firstJoined);
        SubstituteForward(injected, fed);
        SolveFurther(asked, potentials);
    }

    /// <summary>Finds the potentials of further nodes for the currents of the last call of <see cref="Solve(ReadOnlySpan{T}, int[], int[], Span{T})"/>.</summary>
    /// <param name="asked">Places that were not asked for yet, the last in the order of elimination first; all above them were, or stand before them here.</param>
    /// <param name="potentials">Receives their potentials; those of the others stay.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void SolveFurther(int[] asked, Span<T> potentials)
    {
        var (start, row, inBlock) = (_pattern.ColumnStart, _pattern.FactorRow, _block.Place);
        foreach (var column in asked)
        {
            if (inBlock[column] < 0)
            {
                var value = _values[column] * _inversePivot[column];
                for (var at = start[column]; at < start[column + 1]; at++)
                    value -= _factor[at] * _values[row[at]];
                _values[column] = value;
            }

            potentials[_pattern.NodeAt[column]] = _values[column];
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FactorRow(int row)
    {
        var (one, rowStart, rowNode, rowPlace) = (_pattern.One, _pattern.RowStart, _pattern.RowNode, _pattern.RowPlace);
        var inBlock = _block.Place;
        var joined = inBlock[row];
        var pivot = _leak;
        for (var at = _pattern.TouchStart[row]; at < _pattern.TouchStart[row + 1]; at++)
        {
            var branch = _pattern.Touch[at];
            pivot += _admittance[branch];
            // The first end is the one that is eliminated first; the branch stands in the row of the other.
            if (_pattern.Two[branch] == row && one[branch] >= 0)
                _work[one[branch]] -= _admittance[branch];
        }

        if (joined >= 0)
            _block.ClearRow(joined);
        for (var at = rowStart[row]; at < rowStart[row + 1]; at++)
        {
            var (node, place) = (rowNode[at], rowPlace[at]);
            var value = _work[node];
            if (T.IsZero(value))
            {
                _factor[place] = T.Zero;
                continue;
            }

            _work[node] = T.Zero;
            if (inBlock[node] >= 0)
            {
                _block.Put(joined, inBlock[node], value);
                continue;
            }

            for (var below = _pattern.ColumnStart[node]; below < place; below++)
                _work[_pattern.FactorRow[below]] -= _factor[below] * value;
            var lower = value / _pivot[node];
            pivot -= lower * value;
            _factor[place] = lower;
        }

        // The factor itself is divided, never multiplied by an inverse: metal that only leaks hold bears no rounding more.
        (_pivot[row], _inversePivot[row]) = (pivot, T.One / pivot);
        if (joined >= 0)
            _block.PutPivot(joined, pivot);
    }

    // What flows in alters only the places on the ways from where it does to the root.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void SubstituteForward(ReadOnlySpan<T> injected, int[] fed)
    {
        var (start, row, inBlock) = (_pattern.ColumnStart, _pattern.FactorRow, _block.Place);
        Array.Clear(_values);
        foreach (var place in fed)
            _values[place] = injected[_pattern.NodeAt[place]];
        for (var at = fed.Length - 1; at >= 0; at--)
        {
            var column = fed[at];
            var value = _values[column];
            if (!T.IsZero(value) && inBlock[column] < 0)
                for (var number = start[column]; number < start[column + 1]; number++)
                    _values[row[number]] -= _factor[number] * value;
        }

        _block.Substitute(_values);
    }
}
