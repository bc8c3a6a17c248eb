namespace Proveout.Engine.Motion;

/// <summary>Lines of equal height by marching squares: each cell of the lattice is crossed where its corners lie on both sides of the height.</summary>
/// <remarks>Where all four edges are crossed the mean of the corners decides which of them hang together. Cells with a corner that is not known are left out.</remarks>
public sealed class ContourLines
{
    private static readonly double[] RoundFigures = [1, 2, 5, 10];

    private readonly HeightField _field;
    private readonly double _height;
    private readonly Dictionary<int, List<int>> _next = [];

    private ContourLines(HeightField field, double height) => (_field, _height) = (field, height);

    /// <summary>The lines of a height.</summary>
    public static IReadOnlyList<ContourLine> Of(HeightField field, double heightMillimetres)
    {
        ArgumentNullException.ThrowIfNull(field);
        var lines = new ContourLines(field, heightMillimetres);
        for (var row = 0; row + 1 < field.Ys.Count; row++)
            for (var column = 0; column + 1 < field.Xs.Count; column++)
                lines.Cross(column, row);
        return [.. lines.Chains()];
    }

    /// <summary>Heights at which to draw: multiples of 1, 2 or 5 between lowest and highest, at most some, and no closer than asked.</summary>
    public static IReadOnlyList<double> Levels(double low, double high, int most, double closest)
    {
        var step = RoundStep(Math.Max((high - low) / most, closest));
        var first = (long)Math.Floor(low / step) + 1;
        return [.. Enumerable.Range(0, most + 1).Select(index => (first + index) * step).Where(level => level < high - (1e-9 * step))];
    }

    /// <summary>The least step of 1, 2 or 5 times a power of ten that is not below a length.</summary>
    public static double RoundStep(double least)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(least);
        var power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        return RoundFigures.Select(factor => factor * power).First(step => step >= least * (1 - 1e-9));
    }

    // An edge of the lattice by the crossing it leaves, to the right or upward.
    private int Edge(int column, int row, bool isUpward) => (2 * ((row * _field.Xs.Count) + column)) + (isUpward ? 1 : 0);

    private void Cross(int column, int row)
    {
        double[] corners = [_field.At(column, row), _field.At(column + 1, row), _field.At(column + 1, row + 1), _field.At(column, row + 1)];
        if (corners.Any(double.IsNaN))
            return;
        int[] edges = [Edge(column, row, false), Edge(column + 1, row, true), Edge(column, row + 1, false), Edge(column, row, true)];
        int[] crossed = [.. Enumerable.Range(0, 4).Where(side => corners[side] >= _height != corners[(side + 1) % 4] >= _height).Select(side => edges[side])];
        if (crossed.Length == 2)
            Join(crossed[0], crossed[1]);
        if (crossed.Length < 4)
            return;
        // Corners on the side of the mean hang together; the lines cut off the other two.
        var cutsFirst = corners[0] >= _height != corners.Average() >= _height;
        Join(edges[0], cutsFirst ? edges[3] : edges[1]);
        Join(edges[2], cutsFirst ? edges[1] : edges[3]);
    }

    private void Join(int one, int other)
    {
        Neighbours(one).Add(other);
        Neighbours(other).Add(one);
    }

    private List<int> Neighbours(int edge)
    {
        if (!_next.TryGetValue(edge, out var neighbours))
            _next[edge] = neighbours = [];
        return neighbours;
    }

    // Lines that end at the rim are followed first, from their ends; what is left are rings.
    private IEnumerable<ContourLine> Chains()
    {
        foreach (var end in _next.Keys.Where(edge => _next[edge].Count == 1).Order().ToArray())
            if (_next[end].Count == 1)
                yield return new ContourLine(Follow(end), IsClosed: false);
        foreach (var start in _next.Keys.Order().ToArray())
            if (_next[start].Count > 0)
                yield return new ContourLine(Follow(start), IsClosed: true);
    }

    private List<(double X, double Y)> Follow(int start)
    {
        List<(double X, double Y)> spots = [Spot(start)];
        var at = start;
        while (_next[at].Count > 0)
        {
            var next = _next[at][0];
            _next[at].Remove(next);
            _next[next].Remove(at);
            spots.Add(Spot(next));
            at = next;
        }

        return spots;
    }

    private (double X, double Y) Spot(int edge)
    {
        var (column, row) = (edge / 2 % _field.Xs.Count, edge / 2 / _field.Xs.Count);
        var (farColumn, farRow) = edge % 2 == 0 ? (column + 1, row) : (column, row + 1);
        var (near, far) = (_field.At(column, row), _field.At(farColumn, farRow));
        var share = (_height - near) / (far - near);
        return (_field.Xs[column] + (share * (_field.Xs[farColumn] - _field.Xs[column])), _field.Ys[row] + (share * (_field.Ys[farRow] - _field.Ys[row])));
    }
}
