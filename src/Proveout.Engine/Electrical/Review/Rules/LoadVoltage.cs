using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Every part gets the voltage that it is made for: no more than its terminals bear, no less than it works from.</summary>
/// <remarks>What a jumper selects is looked at by <see cref="JumperVoltage"/>.</remarks>
internal sealed class LoadVoltage : IReviewRule
{
    // Terminals are rated some 10 to 15 % above the nominal voltage, and what heats or turns hardly does so at half of it. Common practice.
    private const double LeastFraction = 0.6;

    private const string Source = "IEC 60204-1 clause 4.3; ratings from the part types";

    public string Id => "load-voltage";

    public string Words => "voltage that reaches each part against what it bears and works from";

    public IEnumerable<Finding> Review(ReviewContext context) => TooHigh(context).Concat(TooLow(context)).DistinctBy(finding => finding.Sentence);

    private IEnumerable<Finding> TooHigh(ReviewContext context) =>
        from reach in context.Supplies
        from node in reach.Fed
        let rated = context.TerminalAt(node)?.Voltage?.Volts
        where rated is not null && reach.Supply.Volts > rated
        where !reach.WayTo(node).Any(step => step.Element.Kind == ElementKind.Jumper)
        orderby node
        group (node, rated.Value) by (reach, context.Wiring.Nodes[node].Subject) into found
        select High(context, found.Key.reach.Supply, found.Key.Subject, found.First());

    private Finding High(ReviewContext context, Supply supply, string part, (int Node, double Rated) first) => new(
        Id,
        FindingSeverity.Error,
        [part],
        $"{supply.Name} reaches {context.Wiring.Nodes[first.Node]} ({context.Design.FindPart(part)!.Name}), which bears {ReviewContext.Number(first.Rated)} V: {ReviewContext.Number(supply.Volts)} V destroy it.",
        "Feed it from a supply of its own voltage, or take a part for this one.",
        Source)
    {
        Numbers = [new("voltage", supply.Volts, "V"), new("rated voltage", first.Rated, "V")],
    };

    private IEnumerable<Finding> TooLow(ReviewContext context) =>
        from port in Ports(context)
        from reach in context.SuppliesOf(port.Fed, port.Returned)
        where reach.Supply.Volts < port.LeastVolts && !reach.WayTo(port.Fed).Any(step => step.Element.Kind == ElementKind.Jumper)
        where !context.SuppliesOf(port.Fed, port.Returned).Any(other => other.Supply.Volts >= port.LeastVolts)
        select new Finding(
            Id,
            FindingSeverity.Error,
            [port.Part.Designation],
            $"{port.Part.Designation} ({port.Part.Name}) gets {ReviewContext.Number(reach.Supply.Volts)} V from {reach.Supply.Name} and works from {ReviewContext.Number(port.LeastVolts)} V: it does not run.",
            "Feed it from a supply of its own voltage, or take a part for this one.",
            Source)
        {
            Numbers = [new("voltage", reach.Supply.Volts, "V"), new("least voltage", port.LeastVolts, "V")],
        };

    private static IEnumerable<(Part Part, int Fed, int Returned, double LeastVolts)> Ports(ReviewContext context) =>
    [
        .. from port in context.Consumers
           where port.Element.WorksFrom is not null || port.Part.Type.ClassLetter is "E" or "G" or "M" or "P"
           select (port.Part, port.A, port.B, port.Element.WorksFrom?.Volts ?? LeastFraction * port.Element.Voltage.Volts),
        .. from load in context.Loads
           let part = context.PartOf(load.Element)
           let rated = context.TerminalAt(load.Element.A)?.Voltage ?? context.TerminalAt(load.Element.B)?.Voltage
           where rated is not null && part.Type.ClassLetter is "E" or "M"
           where part.Type.Circuit.OfType<Consumer>().FirstOrDefault() is null
           select (part, load.Fed, load.Returned, LeastFraction * rated.Value.Volts),
    ];
}
