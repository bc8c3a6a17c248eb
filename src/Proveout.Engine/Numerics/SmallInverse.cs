namespace Proveout.Engine.Numerics;

/// <summary>Inverts small symmetric matrices in double-double. Reused from matrix to matrix by one thread.</summary>
internal sealed class SmallInverse
{
    private DoubleDouble[] _matrix = [];
    private DoubleDouble[] _inverse = [];
    private int _size;

    /// <summary>An entry of the matrix, or of its inverse once it is inverted.</summary>
    public DoubleDouble this[int row, int column] => _matrix[(row * _size) + column];

    /// <summary>Starts a matrix of a size; every entry is to be set.</summary>
    public void Reset(int size)
    {
        _size = size;
        if (_matrix.Length < size * size)
            (_matrix, _inverse) = (new DoubleDouble[size * size], new DoubleDouble[size * size]);
    }

    /// <summary>Sets an entry and its mirror image.</summary>
    public void Set(int row, int column, DoubleDouble value) =>
        _matrix[(row * _size) + column] = _matrix[(column * _size) + row] = value;

    /// <summary>Replaces the matrix by its inverse, by Gauss-Jordan elimination with row pivoting; false when it is singular to working precision.</summary>
    public bool Invert()
    {
        Array.Clear(_inverse);
        for (var index = 0; index < _size; index++)
            RowOf(_inverse, index)[index] = 1;
        for (var column = 0; column < _size; column++)
            if (!Eliminate(column))
                return false;
        (_matrix, _inverse) = (_inverse, _matrix);
        return true;
    }

    private bool Eliminate(int column)
    {
        var pivotRow = column;
        for (var row = column + 1; row < _size; row++)
            if (Math.Abs(this[row, column].High) > Math.Abs(this[pivotRow, column].High))
                pivotRow = row;
        if (this[pivotRow, column].High == 0)
            return false;
        Swap(column, pivotRow);
        var scale = (DoubleDouble)1 / this[column, column];
        Scale(RowOf(_matrix, column), scale);
        Scale(RowOf(_inverse, column), scale);
        for (var row = 0; row < _size; row++)
            if (row != column && this[row, column] is { High: not 0 } factor)
            {
                Subtract(RowOf(_matrix, row), factor, RowOf(_matrix, column));
                Subtract(RowOf(_inverse, row), factor, RowOf(_inverse, column));
            }

        return true;
    }

    private void Swap(int one, int two)
    {
        for (var index = 0; one != two && index < _size; index++)
        {
            (RowOf(_matrix, one)[index], RowOf(_matrix, two)[index]) = (RowOf(_matrix, two)[index], RowOf(_matrix, one)[index]);
            (RowOf(_inverse, one)[index], RowOf(_inverse, two)[index]) = (RowOf(_inverse, two)[index], RowOf(_inverse, one)[index]);
        }
    }

    private Span<DoubleDouble> RowOf(DoubleDouble[] matrix, int row) => matrix.AsSpan(row * _size, _size);

    private static void Scale(Span<DoubleDouble> row, DoubleDouble factor)
    {
        foreach (ref var value in row)
            value *= factor;
    }

    private static void Subtract(Span<DoubleDouble> row, DoubleDouble factor, Span<DoubleDouble> other)
    {
        for (var index = 0; index < row.Length; index++)
            row[index] -= factor * other[index];
    }
}
