namespace Proveout.Engine.Machine;

/// <summary>Follows one conductor from terminal to terminal.</summary>
internal sealed class WayFinder
{
    private readonly MachineLayout _layout;
    private readonly Conductor _conductor;
    private readonly List<WayLeg> _legs = [];
    private (string Surface, SpotMm Spot)? _here;
    private string? _missing;

    private WayFinder(MachineLayout layout, Conductor conductor) => (_layout, _conductor) = (layout, conductor);

    public static ConductorWay Of(MachineLayout layout, Conductor conductor)
    {
        var finder = new WayFinder(layout, conductor);
        finder.Leave();
        for (var at = 0; at < conductor.Route.Count; at++)
            finder.Follow(layout.RouteOf(conductor.Route[at]), at);
        finder.Arrive();
        return new(conductor, finder._legs, layout.SlackAtMm(conductor.From.Part) + layout.SlackAtMm(conductor.To.Part), finder._missing);
    }

    private void Leave()
    {
        if (_layout.PlacedOf(_conductor.From.Part) is { } placed)
            _here = (placed.Surface.Name, placed.SpotOf(_conductor.From.Terminal));
        else
            Reach(_conductor.From.Part);
    }

    private void Arrive()
    {
        if (_layout.PlacedOf(_conductor.To.Part) is not { } placed)
        {
            if (_here is not null && _conductor.Route.Count == 0)
                _missing ??= $"no route leads from {Quote.Of(_conductor.From.Part)} to {Quote.Of(_conductor.To.Part)}";
            Reach(_conductor.To.Part);
        }
        else if (_here is { } here && here.Surface == placed.Surface.Name)
            GoTo(placed.SpotOf(_conductor.To.Terminal));
        else
            _missing ??= $"nothing says how it comes to {Quote.Of(placed.Surface.Name)}";
    }

    // A part that lies on no surface: its terminals are so far from the end of the routes to it.
    private void Reach(string designation)
    {
        if (_layout.ReachMm(designation) is { } reach)
            _legs.Add(new(null, "", [], reach, 0, reach));
        else
            _missing ??= $"{Quote.Of(designation)} has neither a place on a surface nor a `reach`";
    }

    private void Follow(Route route, int at)
    {
        if (_layout.LineOf(route) is { } line)
            FollowLine(route, line, at);
        else if (route.Length is not { } length)
            _missing ??= $"the route {Quote.Of(route.Name)} has neither a path on a surface nor a length";
        else if (route.Path is not [var mouth])
            Away(route, length.Millimeters);
        else if (_here is { } here && here.Surface == route.On)
        {
            GoTo(SpotMm.Of(mouth));
            Away(route, length.Millimeters);
        }
        else
        {
            Away(route, length.Millimeters);
            _here = (route.On, SpotMm.Of(mouth));
        }
    }

    private void FollowLine(Route route, Polyline line, int at)
    {
        var comesFrom = _here is { } here && here.Surface == route.On ? line.NearestTo(here.Spot) : (double?)null;
        var leaves = LeavesAt(route, line, at) ?? FarEndOf(line, comesFrom ?? 0);
        var enters = comesFrom ?? FarEndOf(line, leaves);
        if (comesFrom is null)
            _here = (route.On, line.At(enters));
        else
            GoTo(line.At(enters));
        _legs.Add(new(route.Name, route.On, line.Between(enters, leaves), Math.Abs(leaves - enters), enters, leaves));
        _here = (route.On, line.At(leaves));
    }

    // Where the next thing on this surface is nearest: the next route's line or mouth, or the terminal itself.
    private double? LeavesAt(Route route, Polyline line, int at)
    {
        if (at + 1 < _conductor.Route.Count)
        {
            var next = _layout.RouteOf(_conductor.Route[at + 1]);
            if (next.On != route.On || next.Path.Count == 0)
                return null;
            return _layout.LineOf(next) is { } other ? line.NearestTo(other) : line.NearestTo(SpotMm.Of(next.Path[0]));
        }

        return _layout.PlacedOf(_conductor.To.Part) is { } placed && placed.Surface.Name == route.On
            ? line.NearestTo(placed.SpotOf(_conductor.To.Terminal))
            : null;
    }

    private static double FarEndOf(Polyline line, double stationMm) => stationMm < line.LengthMm / 2 ? line.LengthMm : 0;

    private void GoTo(SpotMm spot)
    {
        if (_here is not { } here)
            return;
        if (here.Spot.SquareDistanceTo(spot) is > 0 and var length)
            _legs.Add(new(null, here.Surface, CornersBetween(here.Spot, spot), length, 0, length));
        _here = (here.Surface, spot);
    }

    private void Away(Route route, double lengthMm)
    {
        _legs.Add(new(route.Name, "", [], lengthMm, 0, lengthMm));
        _here = null;
    }

    private static IReadOnlyList<SpotMm> CornersBetween(SpotMm from, SpotMm to) =>
        from.Across == to.Across || from.Up == to.Up ? [from, to] : [from, new(from.Across, to.Up), to];
}
