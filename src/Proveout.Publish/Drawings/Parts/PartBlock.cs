using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>What stands together on a part's page: a connector with its terminals, or a jumper.</summary>
/// <param name="Heading">Its name and what to know.</param>
/// <param name="Rows">Terminals in the order in which they sit beside each other; none for a jumper.</param>
/// <param name="Jumper">The jumper; null for a connector.</param>
/// <param name="Position">Name of the position that the jumper is fitted in; null when it is not fitted.</param>
internal sealed record PartBlock(string Heading, IReadOnlyList<PartRow> Rows, Jumper? Jumper, string? Position)
{
    public const double RowHeight = 5;
    public const double HeadHeight = 6;
    public const double JumperHeight = 19;

    public double Height => Jumper is null ? HeadHeight + (Rows.Count * RowHeight) + 2 : HeadHeight + JumperHeight + 2;

    /// <summary>Jumpers first, then connector by connector, then terminals that stand alone; connectors too high for a page are continued.</summary>
    public static IEnumerable<PartBlock> Of(MachineDesign design, Part part, int mostRows)
    {
        foreach (var jumper in part.Type.Jumpers)
            yield return OfJumper(part, jumper);
        foreach (var group in part.Type.Terminals.GroupBy(terminal => part.Type.ConnectorOf(terminal.Name)))
        {
            var names = group.Key?.Terminals ?? group.Select(terminal => terminal.Name).ToValueList();
            var heading = group.Key is { } connector
                ? $"{connector.Name}: {(connector.Pluggable ? "plug" : "fixed")}, {connector.Family}, {connector.Terminals.Count} poles"
                : "Terminals of their own";
            foreach (var (rows, at) in names.SelectMany(name => PartRow.Of(design, new(part.Designation, name))).Chunk(mostRows).Select((rows, at) => (rows, at)))
                yield return new(at == 0 ? heading : heading + ", continued", rows, null, null);
        }
    }

    private static PartBlock OfJumper(Part part, Jumper jumper)
    {
        var position = part.Jumpers.FirstOrDefault(setting => setting.Jumper == jumper.Name)?.Position;
        var reached = Reached(part.Type, jumper.Common).ToList();
        var places = string.Join(", ", reached);
        var heading = (position, reached.Count) switch
        {
            (null, 0) => "not fitted",
            (null, _) => $"not fitted, nothing on {places}",
            (_, 0) => position,
            _ => $"{position}, given to {places}",
        };
        return new($"Jumper {jumper.Name}: {heading}", [], jumper, position);
    }

    // What hangs on the common post by a track alone.
    private static IEnumerable<string> Reached(PartType type, string common) => type.Circuit
        .OfType<Resistor>()
        .Where(track => track.Value.High is { Ohms: <= 1 } && (track.A == common || track.B == common))
        .Select(track => track.A == common ? track.B : track.A)
        .Where(name => type.FindTerminal(name) is not null);
}
