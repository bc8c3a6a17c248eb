namespace Proveout.Engine.Machine;

/// <summary>The centre line of a route on a surface, corner by corner, with distances along it.</summary>
internal sealed class Polyline
{
    private readonly SpotMm[] _corners;
    private readonly double[] _stationsMm;

    public Polyline(IEnumerable<SpotMm> corners)
    {
        _corners = [.. corners];
        _stationsMm = new double[_corners.Length];
        for (var at = 1; at < _corners.Length; at++)
            _stationsMm[at] = _stationsMm[at - 1] + _corners[at - 1].DistanceTo(_corners[at]);
    }

    public double LengthMm => _stationsMm[^1];

    public IReadOnlyList<SpotMm> Corners => _corners;

    /// <summary>The point at a distance from its beginning.</summary>
    public SpotMm At(double stationMm)
    {
        var leg = 1;
        while (leg < _corners.Length - 1 && _stationsMm[leg] < stationMm)
            leg++;
        var length = _stationsMm[leg] - _stationsMm[leg - 1];
        return length == 0 ? _corners[leg] : _corners[leg - 1].Towards(_corners[leg], Math.Clamp((stationMm - _stationsMm[leg - 1]) / length, 0, 1));
    }

    /// <summary>The distance from its beginning to the point of it that is nearest to a spot.</summary>
    public double NearestTo(SpotMm spot)
    {
        var (best, nearest) = (0.0, double.PositiveInfinity);
        for (var leg = 1; leg < _corners.Length; leg++)
        {
            var station = NearestOnLeg(leg, spot);
            if (At(station).DistanceTo(spot) is var distance && distance < nearest)
                (best, nearest) = (station, distance);
        }

        return best;
    }

    /// <summary>The distance from its beginning to the point of it that is nearest to another line: where both meet, if they do.</summary>
    public double NearestTo(Polyline other)
    {
        // Of two straight legs that do not cross, one end is nearest; that of a crossing is found by its own equation.
        var (best, nearest) = (0.0, double.PositiveInfinity);
        foreach (var station in other._corners.Select(NearestTo).Concat(_stationsMm).Concat(CrossingsWith(other)))
            if (At(station) is var spot && other.At(other.NearestTo(spot)).DistanceTo(spot) is var distance && distance < nearest)
                (best, nearest) = (station, distance);
        return best;
    }

    /// <summary>Its corners between two distances from its beginning, with both ends, in the order of travel.</summary>
    public IReadOnlyList<SpotMm> Between(double fromMm, double toMm)
    {
        var (low, high) = (Math.Min(fromMm, toMm), Math.Max(fromMm, toMm));
        var inner = _corners.Where((_, at) => _stationsMm[at] > low && _stationsMm[at] < high);
        return [At(fromMm), .. fromMm <= toMm ? inner : inner.Reverse(), At(toMm)];
    }

    private double NearestOnLeg(int leg, SpotMm spot)
    {
        var (from, to) = (_corners[leg - 1], _corners[leg]);
        var length = _stationsMm[leg] - _stationsMm[leg - 1];
        if (length == 0)
            return _stationsMm[leg];
        var along = (((spot.Across - from.Across) * (to.Across - from.Across)) + ((spot.Up - from.Up) * (to.Up - from.Up))) / length;
        return _stationsMm[leg - 1] + Math.Clamp(along, 0, length);
    }

    private IEnumerable<double> CrossingsWith(Polyline other)
    {
        for (var leg = 1; leg < _corners.Length; leg++)
            for (var another = 1; another < other._corners.Length; another++)
                if (ShareAtCrossing(_corners[leg - 1], _corners[leg], other._corners[another - 1], other._corners[another]) is { } share)
                    yield return _stationsMm[leg - 1] + (share * (_stationsMm[leg] - _stationsMm[leg - 1]));
    }

    private static double? ShareAtCrossing(SpotMm a, SpotMm b, SpotMm c, SpotMm d)
    {
        var (abX, abY, cdX, cdY) = (b.Across - a.Across, b.Up - a.Up, d.Across - c.Across, d.Up - c.Up);
        var cross = (abX * cdY) - (abY * cdX);
        if (cross == 0)
            return null;
        var onFirst = (((c.Across - a.Across) * cdY) - ((c.Up - a.Up) * cdX)) / cross;
        var onSecond = (((c.Across - a.Across) * abY) - ((c.Up - a.Up) * abX)) / cross;
        return onFirst is >= 0 and <= 1 && onSecond is >= 0 and <= 1 ? onFirst : null;
    }
}
