using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The metal that a conductor can touch in a place: bonded metal, or the body of a heater or motor.</summary>
internal sealed class MetalPlaces
{
    private readonly WiringContext _context;
    private readonly Dictionary<string, TerminalReference> _ofPlace;
    private readonly TerminalReference? _frame;

    public MetalPlaces(WiringContext context)
    {
        _context = context;
        _ofPlace = context.Design.Parts
            .Select(part => (part.Place, Metal: MetalOf(part)))
            .Where(item => item.Place.Length > 0 && item.Metal is not null)
            .GroupBy(item => item.Place)
            .ToDictionary(group => group.Key, group => group.First().Metal!.Value);
        _frame = context.Design.Parts
            .Where(part => part.Type is { ExposedConductivePart: true, ClassLetter: "U" })
            .Select(MetalOf)
            .FirstOrDefault(metal => metal is not null);
    }

    /// <summary>Metal in the place of a part, or null.</summary>
    public TerminalReference? InPlaceOf(string part) =>
        _ofPlace.TryGetValue(_context.Design.FindPart(part)!.Place, out var metal) ? metal : null;

    /// <summary>Metal that a conductor runs along: the frame when it passes a channel or chain; else null.</summary>
    public TerminalReference? Along(Conductor conductor) =>
        conductor.Route.Any(name => _context.Design.Routes.First(route => route.Name == name).Kind is RouteKind.Channel or RouteKind.Chain) ? _frame : null;

    /// <summary>The metal of a part: of an exposed one its bare spot, else its body; null when it has none.</summary>
    public static TerminalReference? MetalOf(Part part)
    {
        var names = part.Type.ExposedConductivePart
            ? part.Type.Terminals.Where(terminal => terminal.Role == TerminalRole.ProtectiveEarth).Select(terminal => terminal.Name)
            : BodiesOf(part);
        return names.LastOrDefault() is { } name ? new TerminalReference(part.Designation, name) : null;
    }

    /// <summary>Terminals that stand for the body of a part: insulation lies between them and its circuit, and no conductor need land there.</summary>
    public static IEnumerable<string> BodiesOf(Part part) =>
        from terminal in part.Type.Terminals
        where terminal.Role is TerminalRole.Passive or TerminalRole.ProtectiveEarth
        where part.Type.ConnectorOf(terminal.Name) is null
        let touching = part.Type.Circuit.Where(element => element.A == terminal.Name || element.B == terminal.Name).ToArray()
        where touching.OfType<Insulation>().Any()
        select terminal.Name;
}
