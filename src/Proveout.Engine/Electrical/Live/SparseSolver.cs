using System.Numerics;
using System.Runtime.CompilerServices;

namespace Proveout.Engine.Electrical;

/// <summary>Solves networks of admittances by LDLᵀ with the nodes in a fixed order; what changes from call to call is factored anew, the rest stays.</summary>
/// <remarks>
/// Up-looking factorisation along the elimination tree (Davis, ACM Transactions on Mathematical Software 31 (2005) 587–591). A row of the factor
/// depends on the rows below it in the tree only, so a changed branch alters the rows on the way from its ends to the root and no other. They are
/// computed from the admittances, not updated, so no error builds up however often things switch. Not safe for two threads at once.
/// </remarks>
/// <typeparam name="T">Real or complex numbers.</typeparam>
internal sealed class SparseSolver<T>
    where T : struct, INumberBase<T>
{
    private readonly SparsePattern _pattern;
    private readonly T[] _pivot, _work;
    private readonly bool[] _stale;
    private T[] _admittance = [], _factor = [];
    private T _leak;
    private bool _isFresh;

    /// <summary>Makes a solver.</summary>
    /// <param name="position">Place of each node in the order of elimination.</param>
    public SparseSolver(int[] position)
    {
        _pattern = new SparsePattern(position);
        (_pivot, _work, _stale) = (new T[position.Length], new T[position.Length], new bool[position.Length]);
    }

    /// <summary>Takes up a network.</summary>
    /// <param name="branches">Both nodes of every branch that may ever conduct; −1 is earth, at potential 0. It is not changed any more.</param>
    /// <param name="leak">Admittance from every node to earth.</param>
    public void Begin((int A, int B)[] branches, T leak)
    {
        _isFresh = !_pattern.TryKeep(branches) || _leak != leak;
        if (!_isFresh)
            return;
        _leak = leak;
        if (_admittance.Length < branches.Length)
            _admittance = new T[branches.Length * 2];
        if (_factor.Length < _pattern.FactorLength)
            _factor = new T[_pattern.FactorLength * 2];
    }

    /// <summary>Solves for the node potentials.</summary>
    /// <param name="admittances">Admittance of each branch, in the order in which the network was given; zero when it does not conduct.</param>
    /// <param name="injected">Current into each node.</param>
    /// <param name="potentials">Receives the potential of each node.</param>
    public void Solve(ReadOnlySpan<T> admittances, ReadOnlySpan<T> injected, Span<T> potentials)
    {
        if (_isFresh)
            Array.Fill(_stale, true);
        else
            MarkChanged(admittances);
        admittances.CopyTo(_admittance);
        _isFresh = false;
        for (var row = 0; row < _stale.Length; row++)
            if (_stale[row])
                FactorRow(row);
        Array.Clear(_stale);
        Substitute(injected, potentials);
    }

    private void MarkChanged(ReadOnlySpan<T> admittances)
    {
        for (var branch = 0; branch < admittances.Length; branch++)
            if (admittances[branch] != _admittance[branch])
                foreach (var end in (ReadOnlySpan<int>)[_pattern.One[branch], _pattern.Two[branch]])
                    for (var row = end; row >= 0 && !_stale[row]; row = _pattern.Parent[row])
                        _stale[row] = true;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FactorRow(int row)
    {
        var (one, rowStart, rowNode, rowPlace) = (_pattern.One, _pattern.RowStart, _pattern.RowNode, _pattern.RowPlace);
        var pivot = _leak;
        for (var at = _pattern.TouchStart[row]; at < _pattern.TouchStart[row + 1]; at++)
        {
            var branch = _pattern.Touch[at];
            pivot += _admittance[branch];
            // The first end is the one that is eliminated first; the branch stands in the row of the other.
            if (_pattern.Two[branch] == row && one[branch] >= 0)
                _work[one[branch]] -= _admittance[branch];
        }

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
            for (var below = _pattern.ColumnStart[node]; below < place; below++)
                _work[_pattern.FactorRow[below]] -= _factor[below] * value;
            var lower = value / _pivot[node];
            pivot -= lower * value;
            _factor[place] = lower;
        }

        _pivot[row] = pivot;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Substitute(ReadOnlySpan<T> injected, Span<T> potentials)
    {
        var (nodes, position, start, row) = (_work.Length, _pattern.Position, _pattern.ColumnStart, _pattern.FactorRow);
        for (var node = 0; node < nodes; node++)
            _work[position[node]] = injected[node];
        for (var column = 0; column < nodes; column++)
            if (_work[column] is var value && !T.IsZero(value))
                for (var at = start[column]; at < start[column + 1]; at++)
                    _work[row[at]] -= _factor[at] * value;
        for (var column = nodes - 1; column >= 0; column--)
        {
            var value = _work[column] / _pivot[column];
            for (var at = start[column]; at < start[column + 1]; at++)
                value -= _factor[at] * _work[row[at]];
            _work[column] = value;
        }

        for (var node = 0; node < nodes; node++)
            potentials[node] = _work[position[node]];
        Array.Clear(_work);
    }
}
