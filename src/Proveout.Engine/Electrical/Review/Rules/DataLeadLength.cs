using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A data lead is no longer than its kind of signal bears.</summary>
internal sealed class DataLeadLength : IReviewRule
{
    public string Id => "data-lead-length";

    public string Words => "length of data leads against what their signal bears";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from part in context.Design.Parts
        from connector in part.Type.Connectors
        where connector.Longest is not null
        let farthest = Farthest(context, part, connector)
        where farthest.Metres > connector.Longest!.Value.Meters + 1e-9 && string.CompareOrdinal(part.Designation, farthest.Part) < 0
        select new Finding(
            Id,
            FindingSeverity.Warning,
            [part.Designation, farthest.Part],
            $"From {connector.Name} of {part.Designation} to {farthest.Part} the data lead is {ReviewContext.Number(farthest.Metres, 2)} m long; its signal bears {ReviewContext.Number(connector.Longest!.Value.Meters, 2)} m.",
            "Shorten the lead, or put a repeater between.",
            "the standard of the port, as the part type says")
        {
            Numbers = [new("length", farthest.Metres, "m"), new("longest", connector.Longest.Value.Meters, "m")],
        };

    private static (double Metres, string Part) Farthest(ReviewContext context, Part part, Connector connector) => connector.Terminals
        .Select(name => new TerminalReference(part.Designation, name))
        .Where(terminal => context.Design.FindTerminal(terminal)!.Role == TerminalRole.Data)
        .Select(terminal => Walk(context, terminal))
        .DefaultIfEmpty((0, part.Designation))
        .MaxBy(reached => reached.Item1);

    // Along conductors from terminal to terminal; a part that passes data on by its own electronics ends the lead.
    private static (double Metres, string Part) Walk(ReviewContext context, TerminalReference start)
    {
        var reached = new Dictionary<TerminalReference, double> { [start] = 0 };
        var queue = new Queue<TerminalReference>([start]);
        while (queue.TryDequeue(out var at))
            foreach (var conductor in context.Context.ConductorsAt(at))
                if ((conductor.From == at ? conductor.To : conductor.From) is var other && reached.TryAdd(other, reached[at] + conductor.Length.Meters))
                    queue.Enqueue(other);
        var farthest = reached.MaxBy(pair => pair.Value);
        return (farthest.Value, farthest.Key.Part);
    }
}
