using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What each conductor bears where it lies: method of installation, air around it, loaded circuits beside it.</summary>
internal sealed class ConductorLoading
{
    // IEC 60204-1 annex D.2.3, IEC 60364-5-52 clause 523.5: conductors that carry less than 30 % of their capacity in the group are not counted.
    private const double NotLoaded = 0.3;

    private readonly ReviewContext _context;
    private readonly Dictionary<string, Route> _routes;
    private readonly Dictionary<string, int> _circuits;

    public ConductorLoading(ReviewContext context)
    {
        _context = context;
        _routes = context.Design.Routes.ToDictionary(route => route.Name, StringComparer.Ordinal);
        var inside = context.Design.Conductors
            .SelectMany(conductor => conductor.Route.Distinct().Select(route => (route, conductor)))
            .ToLookup(item => item.route, item => item.conductor, StringComparer.Ordinal);
        _circuits = inside.ToDictionary(group => group.Key, group => CircuitsIn(group.Key, [.. group]), StringComparer.Ordinal);
    }

    /// <summary>Largest known current in a conductor in amperes; zero when none is known.</summary>
    public double AmperesIn(Conductor conductor) => _context.Currents.In(_context.Context.CopperOf(conductor))?.Amperes ?? 0;

    /// <summary>What a conductor bears on the worst of its routes.</summary>
    public Bearing Of(Conductor conductor) =>
        conductor.Route.Count == 0
            ? BearingOf(conductor, null, 1)
            : conductor.Route.Select(name => BearingOf(conductor, _routes[name], _circuits[name])).MinBy(bearing => bearing.Amperes)!;

    private Bearing BearingOf(Conductor conductor, Route? route, int circuits)
    {
        var method = MethodOf(conductor, route);
        var celsius = route?.Ambient?.DegreesCelsius ?? _context.Ambient;
        var alone = CurrentCapacity.Of(conductor.CrossSection.SquareMillimeters, method) * CapacityFactors.ForAmbient(celsius);
        return new(alone * CapacityFactors.ForGroup(circuits, method), alone, method, celsius, circuits, route?.Name);
    }

    // What its kind lets one expect where the file says nothing: trunking for all that is closed, and free air, taken as a wall, for what runs in no route.
    private static InstallationMethod MethodOf(Conductor conductor, Route? route) =>
        route?.Method ?? (route is null ? InstallationMethod.C : conductor.Make.Cable.Length > 0 ? InstallationMethod.B2 : InstallationMethod.B1);

    // Two loaded cores are one circuit. The more circuits count, the less each bears and the more count: from one upwards this comes to rest.
    private int CircuitsIn(string route, Conductor[] conductors)
    {
        var circuits = 1;
        while (true)
        {
            var loaded = conductors.Count(conductor => AmperesIn(conductor) > NotLoaded * BearingOf(conductor, _routes[route], circuits).Amperes);
            var counted = Math.Max(1, (loaded + 1) / 2);
            if (counted <= circuits)
                return circuits;
            circuits = counted;
        }
    }
}
