using System.Numerics;
using System.Runtime.CompilerServices;

namespace Proveout.Engine.Electrical;

/// <summary>The part of a factor that new contacts alter: the ways from their ends to the root of the elimination tree, taken as one full matrix.</summary>
/// <remarks>
/// A branch more between two nodes fills the factor on the ways from these to the root and nowhere else, and what is eliminated before a way is not on
/// it. So the rows of the ways are eliminated last, in the same order as ever, and the pattern of the network stays as it is. Nothing is subtracted that the
/// whole factor would not subtract: the answer is as good as that of a network factored anew.
/// </remarks>
/// <typeparam name="T">Real or complex numbers.</typeparam>
internal sealed class JoinBlock<T>(SparsePattern pattern)
    where T : struct, INumberBase<T>
{
    private T[] _rows = [], _pivots = [], _columns = [], _factored = [], _work = [];

    /// <summary>The contacts.</summary>
    public (int A, int B, double Siemens)[] Joins { get; private set; } = [];

    /// <summary>Rows of the factor that are in the block, ascending.</summary>
    public int[] Rows { get; private set; } = [];

    /// <summary>Place in the block of each row of the factor; −1 for those that are not in it.</summary>
    public int[] Place { get; } = [.. Enumerable.Repeat(-1, pattern.Position.Length)];

    /// <summary>True when the block is that of these contacts.</summary>
    public bool IsOf((int A, int B, double Siemens)[] joins) => ReferenceEquals(joins, Joins) || (joins.Length == 0 && Joins.Length == 0);

    /// <summary>Takes up contacts in the place of those of before.</summary>
    public void Take((int A, int B, double Siemens)[] joins)
    {
        foreach (var row in Rows)
            Place[row] = -1;
        Joins = joins;
        var rows = new List<int>();
        foreach (var (a, b, _) in joins)
            foreach (var end in (ReadOnlySpan<int>)[pattern.At(a), pattern.At(b)])
                for (var row = end; row >= 0 && Place[row] < 0; row = pattern.Parent[row])
                {
                    Place[row] = 0;
                    rows.Add(row);
                }

        rows.Sort();
        Rows = [.. rows];
        for (var place = 0; place < Rows.Length; place++)
            Place[Rows[place]] = place;
        MakeRoom();
    }

    /// <summary>Forgets what a row had of the network.</summary>
    public void ClearRow(int row) => Array.Clear(_rows, row * Rows.Length, row);

    /// <summary>Gives a row what the rest of the network leaves of it at another node of the block.</summary>
    public void Put(int row, int column, T value) => _rows[(row * Rows.Length) + column] = value;

    /// <summary>Gives a row what the rest of the network leaves on its diagonal.</summary>
    public void PutPivot(int row, T value) => _pivots[row] = value;

    /// <summary>Factors the rows from one on; those before it are as they were.</summary>
    public void Factor(int from)
    {
        for (var row = from; row < Rows.Length; row++)
            FactorRow(row);
    }

    /// <summary>Solves for the potentials of the block.</summary>
    /// <param name="values">By row of the factor: what flows in, and then the potential.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Substitute(T[] values)
    {
        var size = Rows.Length;
        for (var place = 0; place < size; place++)
            _work[place] = values[Rows[place]];
        for (var column = 0; column < size; column++)
            if (_work[column] is var value && !T.IsZero(value))
                for (var row = column + 1; row < size; row++)
                    _work[row] -= _columns[(column * size) + row] * value;
        for (var column = size - 1; column >= 0; column--)
        {
            var value = _work[column] / _factored[column];
            for (var row = column + 1; row < size; row++)
                value -= _columns[(column * size) + row] * _work[row];
            _work[column] = value;
        }

        for (var place = 0; place < size; place++)
            values[Rows[place]] = _work[place];
    }

    private void MakeRoom()
    {
        var size = Rows.Length;
        if (_work.Length < size)
            (_pivots, _factored, _work) = (new T[size * 2], new T[size * 2], new T[size * 2]);
        if (_rows.Length < size * size)
            (_rows, _columns) = (new T[size * size * 2], new T[size * size * 2]);
    }

    // The factor stands by columns, so that what one column takes from a row lies together.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FactorRow(int row)
    {
        var size = Rows.Length;
        Array.Copy(_rows, row * size, _work, 0, row);
        var pivot = _pivots[row];
        foreach (var (a, b, siemens) in Joins)
        {
            var (one, two) = (PlaceOf(a), PlaceOf(b));
            if (one != row && two != row)
                continue;
            pivot += T.CreateChecked(siemens);
            if (Math.Max(one, two) == row && Math.Min(one, two) is >= 0 and var first)
                _work[first] -= T.CreateChecked(siemens);
        }

        for (var column = 0; column < row; column++)
        {
            var value = _work[column];
            var lower = T.Zero;
            if (!T.IsZero(value))
            {
                var taken = _columns.AsSpan(column * size, row);
                for (var between = column + 1; between < row; between++)
                    _work[between] -= taken[between] * value;
                lower = value / _factored[column];
                pivot -= lower * value;
            }

            _columns[(column * size) + row] = lower;
        }

        _factored[row] = pivot;
    }

    private int PlaceOf(int node) => node < 0 ? -1 : Place[pattern.Position[node]];
}
