namespace Proveout.Engine.Numerics;

/// <summary>Solves small systems of equations in double-double, one matrix for several right sides. Reused from matrix to matrix by one thread.</summary>
internal sealed class SmallSystem
{
    private DoubleDouble[] _matrix = [];
    private DoubleDouble[] _reciprocals = [];
    private int[] _rowAt = [];
    private int _size;

    /// <summary>Starts a matrix of a size; every entry is to be set.</summary>
    public void Reset(int size)
    {
        _size = size;
        if (_rowAt.Length < size)
            (_matrix, _reciprocals, _rowAt) = (new DoubleDouble[size * size], new DoubleDouble[size], new int[size]);
    }

    /// <summary>Sets an entry and its mirror image.</summary>
    public void Set(int row, int column, DoubleDouble value) =>
        _matrix[(row * _size) + column] = _matrix[(column * _size) + row] = value;

    /// <summary>Factors the matrix by Gaussian elimination with row pivoting; false when it is singular to working precision.</summary>
    public bool Factor()
    {
        for (var index = 0; index < _size; index++)
            _rowAt[index] = index;
        for (var step = 0; step < _size; step++)
        {
            Pivot(step);
            var pivotRow = Row(step);
            if (pivotRow[step].High == 0)
                return false;
            _reciprocals[step] = (DoubleDouble)1 / pivotRow[step];
            for (var below = step + 1; below < _size; below++)
            {
                var row = Row(below);
                if (row[step].High == 0)
                    continue;
                var factor = row[step] * _reciprocals[step];
                row[step] = factor;
                for (var column = step + 1; column < _size; column++)
                    row[column] -= factor * pivotRow[column];
            }
        }

        return true;
    }

    /// <summary>Solves for one right side.</summary>
    public void Solve(ReadOnlySpan<DoubleDouble> rightSide, Span<DoubleDouble> solution)
    {
        for (var index = 0; index < _size; index++)
        {
            var value = rightSide[_rowAt[index]];
            var row = Row(index);
            for (var column = 0; column < index; column++)
                if (row[column].High != 0)
                    value -= row[column] * solution[column];
            solution[index] = value;
        }

        for (var index = _size - 1; index >= 0; index--)
        {
            var value = solution[index];
            var row = Row(index);
            for (var column = index + 1; column < _size; column++)
                if (row[column].High != 0)
                    value -= row[column] * solution[column];
            solution[index] = value * _reciprocals[index];
        }
    }

    private void Pivot(int step)
    {
        var best = step;
        for (var index = step + 1; index < _size; index++)
            if (Math.Abs(Row(index)[step].High) > Math.Abs(Row(best)[step].High))
                best = index;
        (_rowAt[step], _rowAt[best]) = (_rowAt[best], _rowAt[step]);
    }

    private Span<DoubleDouble> Row(int place) => _matrix.AsSpan(_rowAt[place] * _size, _size);
}
