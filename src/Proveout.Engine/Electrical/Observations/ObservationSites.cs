using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The things of a machine that are worth looking at.</summary>
internal sealed class ObservationSites
{
    /// <summary>Where things are whose place nobody has said.</summary>
    public const string WholeMachine = "whole machine";

    private readonly WiringContext _context;

    public ObservationSites(WiringContext context)
    {
        _context = context;
        Ends = [.. context.Design.Conductors.SelectMany(conductor => new[] { EndOf(conductor, conductor.From), EndOf(conductor, conductor.To) })];
        Parts = [.. context.Design.Parts.Select(PartOf)];
        Conductors = [.. context.Design.Conductors.Select(conductor => ConductorOf(conductor))];
        Plugs = [.. context.Design.Parts.SelectMany(PlugsOf)];
        Routes = [.. context.Design.Routes.Select(route => new Site(route.Name, route.Name, $"route {route.Name}") { Route = route })];
        Machine = [new(WholeMachine, "machine", "the machine")];
    }

    /// <summary>Every end of every conductor.</summary>
    public IReadOnlyList<Site> Ends { get; }

    /// <summary>Ends on terminals that do not pull off.</summary>
    public IEnumerable<Site> FixedEnds => Ends.Where(end => end.Connector is null or { Pluggable: false, Family: not "moulded-lead" });

    /// <summary>Every part.</summary>
    public IReadOnlyList<Site> Parts { get; }

    /// <summary>Every conductor, where its first end is.</summary>
    public IReadOnlyList<Site> Conductors { get; }

    /// <summary>Every plug in use.</summary>
    public IReadOnlyList<Site> Plugs { get; }

    /// <summary>Every route.</summary>
    public IReadOnlyList<Site> Routes { get; }

    /// <summary>The machine as a whole.</summary>
    public IReadOnlyList<Site> Machine { get; }

    /// <summary>The machine as a whole when mains enters it.</summary>
    public IEnumerable<Site> MainsMachine => Machine.Where(_ => _context.Design.Mains is not null);

    /// <summary>Parts with one of some class letters.</summary>
    public IEnumerable<Site> Letters(params string[] letters) => Parts.Where(site => letters.Contains(site.Part!.Type.ClassLetter));

    /// <summary>Parts on which mains lands.</summary>
    public IEnumerable<Site> MainsParts => Parts.Where(site => Ends.Any(end => end.Part == site.Part && end.IsMains));

    /// <summary>Parts on which data conductors land.</summary>
    public IEnumerable<Site> DataParts => Parts.Where(site => TerminalPairs.WiredTerminals(_context, site.Part!).Any(terminal =>
        site.Part!.Type.FindTerminal(terminal.Terminal)!.Role == TerminalRole.Data));

    /// <summary>Parts that drive windings.</summary>
    public IEnumerable<Site> MotorDrivers => Parts.Where(site => site.Part!.Type.ClassLetter == "A" && _context.Design.Conductors.Any(conductor =>
        (conductor.From.Part == site.Subject && IsWinding(conductor.To)) || (conductor.To.Part == site.Subject && IsWinding(conductor.From))));

    /// <summary>Where a part is.</summary>
    public string PlaceOf(string part) => _context.Design.FindPart(part) is { Place: { Length: > 0 } place } ? place : WholeMachine;

    // Clamp pull of IEC 60999-1, from memory: cross-section in square millimetres, force in newtons. Below 0.2 a bench tug of 5 N; common practice.
    private static double NewtonsOf(Conductor conductor) => conductor.CrossSection.SquareMillimeters switch
    {
        < 0.2 => 5,
        < 0.34 => 10,
        < 0.5 => 15,
        < 0.75 => 20,
        < 1 => 30,
        < 1.5 => 35,
        < 2.5 => 40,
        _ => 50,
    };

    private Site EndOf(Conductor conductor, TerminalReference terminal) =>
        new(PlaceOf(terminal.Part), $"{conductor.Id}:{terminal}", $"{WiringContext.Name(conductor)} at {terminal}")
        {
            Part = _context.Design.FindPart(terminal.Part),
            Conductor = conductor,
            Connector = _context.Design.FindPart(terminal.Part)!.Type.ConnectorOf(terminal.Terminal),
            Class = _context.ClassOf(conductor),
            Newtons = NewtonsOf(conductor),
        };

    private Site PartOf(Part part) => new(PlaceOf(part.Designation), part.Designation, $"{part.Designation} ({part.Name})") { Part = part };

    private Site ConductorOf(Conductor conductor) =>
        new(PlaceOf(conductor.From.Part), conductor.Id, $"conductor {WiringContext.Name(conductor)}")
        {
            Conductor = conductor,
            Part = _context.Design.FindPart(conductor.From.Part),
            Class = _context.ClassOf(conductor),
        };

    private IEnumerable<Site> PlugsOf(Part part) =>
        from connector in part.Type.Connectors
        where connector.Pluggable
        let wired = connector.Terminals.Select(name => new TerminalReference(part.Designation, name)).Where(_context.IsWired).ToArray()
        where wired.Length > 0
        select new Site(PlaceOf(part.Designation), $"{part.Designation}:{connector.Name}", $"plug {connector.Name} of {part.Designation}")
        {
            Part = part,
            Connector = connector,
            Conductor = wired.SelectMany(_context.ConductorsAt).MaxBy(conductor => conductor.CrossSection.SquareMillimeters),
        };

    private bool IsWinding(TerminalReference terminal) => _context.Design.FindTerminal(terminal)!.Role == TerminalRole.Winding;
}
