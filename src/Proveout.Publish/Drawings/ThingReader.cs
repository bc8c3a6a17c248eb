using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using UnitsNet.Units;

namespace Proveout.Publish.Drawings;

/// <summary>Finds in a design what the points of a check are on.</summary>
internal static class ThingReader
{
    /// <summary>Side of a point on the half that pulls off.</summary>
    public const string Plug = "plug";

    /// <summary>Side of a point on the half that stays on the part.</summary>
    public const string Pins = "pins";

    /// <summary>The one or two things that a check touches, in the order of its points.</summary>
    public static IReadOnlyList<Thing> Read(MachineDesign design, Check check) =>
        check.Points
            .Select((point, index) => new PlacedLead((Lead)index, point))
            .GroupBy(placed => placed.Point.Subject)
            .Select(group => ReadOne(design, group.Key, [.. group]))
            .ToList();

    private static Thing ReadOne(MachineDesign design, string subject, IReadOnlyList<PlacedLead> leads)
    {
        if (design.FindPart(subject) is { } part)
            return Window.Around(part.Designation, part.Name, PartContacts(design, part, leads), leads, isConductor: false);
        var conductor = design.Conductors.FirstOrDefault(each => each.Id == subject);
        return conductor is null
            ? Window.Around(subject, "", [.. Missing([], leads)], leads, isConductor: false)
            : OfConductor(conductor, leads);
    }

    private static Thing OfConductor(Conductor conductor, IReadOnlyList<PlacedLead> leads)
    {
        var named = leads.Select(lead => lead with { Point = lead.Point with { Place = EndName(conductor, lead.Point.Place) } }).ToList();
        List<Contact> ends = [Alone(conductor.From.ToString()), Alone(conductor.To.ToString())];
        var name = FormattableString.Invariant(
            $"{ColourWords.Of(conductor.Colour)} conductor, {conductor.CrossSection.As(AreaUnit.SquareMillimeter):0.##} mm²");
        return Window.Around(conductor.Id, name, [.. ends, .. Missing(ends, named)], named, isConductor: true);
    }

    private static string EndName(Conductor conductor, string place) => place switch
    {
        "from" => conductor.From.ToString(),
        "to" => conductor.To.ToString(),
        _ => place,
    };

    private static List<Contact> PartContacts(MachineDesign design, Part part, IReadOnlyList<PlacedLead> leads)
    {
        var apart = leads.Where(lead => lead.Point.Side == Plug || (lead.Point.Side == Pins && HasPlug(design, part, lead.Point.Place)))
            .Select(lead => part.Type.ConnectorOf(lead.Point.Place)?.Name).ToHashSet();
        var known = Neighbours(part.Type, leads).Select(name => OfTerminal(design, part, name, apart)).ToList();
        return [.. known, .. Missing(known, leads)];
    }

    /// <summary>True when a conductor lands on the connector of a terminal: one without any has no plug to draw.</summary>
    private static bool HasPlug(MachineDesign design, Part part, string terminal) =>
        part.Type.ConnectorOf(terminal) is { } connector
        && design.Conductors.Any(each => IsOn(each.From, part, connector) || IsOn(each.To, part, connector));

    private static bool IsOn(TerminalReference end, Part part, Connector connector) =>
        end.Part == part.Designation && connector.Terminals.Contains(end.Terminal);

    /// <summary>The connectors concerned; every terminal in its order when one that is touched belongs to none.</summary>
    private static IEnumerable<string> Neighbours(PartType type, IReadOnlyList<PlacedLead> leads)
    {
        var touched = leads.Select(lead => lead.Point.Place).Where(place => type.FindTerminal(place) is not null).ToList();
        if (touched.Count == 0)
            return [];
        return touched.TrueForAll(place => type.ConnectorOf(place) is not null)
            ? type.Connectors.Where(connector => connector.Terminals.Any(touched.Contains)).SelectMany(connector => connector.Terminals)
            : type.Terminals.Select(terminal => terminal.Name);
    }

    private static Contact OfTerminal(MachineDesign design, Part part, string name, HashSet<string?> apart)
    {
        var connector = part.Type.ConnectorOf(name)?.Name;
        var reference = new TerminalReference(part.Designation, name);
        var conductors = design.Conductors.Where(each => each.From == reference || each.To == reference).Select(each => each.Id);
        var reachable = part.Type.FindTerminal(name)?.Reachable ?? true;
        return new(name, connector ?? "", connector is not null && apart.Contains(connector), reachable, string.Join(", ", conductors));
    }

    /// <summary>Places that the design does not name as terminals, such as bare metal: each stands alone.</summary>
    private static IEnumerable<Contact> Missing(List<Contact> known, IReadOnlyList<PlacedLead> leads) =>
        leads.Select(lead => lead.Point.Place).Distinct()
            .Where(place => known.TrueForAll(contact => contact.Name != place))
            .Select(Alone);

    private static Contact Alone(string name) => new(name, "", Apart: false, Reachable: true, "");
}
