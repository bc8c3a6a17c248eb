using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The insulation of a conductor is made for the highest voltage that it meets, in itself and beside it.</summary>
internal sealed class InsulationVoltage : IReviewRule
{
    public string Id => "insulation-voltage";

    public string Words => "rated voltage of insulation against the conductor's own voltage and that of its neighbours";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        if (context.Design.Mains is null)
            yield break;
        var mixed = MixedRoutes(context);
        var unknown = new List<string>();
        foreach (var conductor in context.Design.Conductors)
        {
            var (volts, where) = Highest(context, conductor, mixed);
            if (conductor.Make.Insulation is null && context.IsMains(conductor))
                unknown.Add(conductor.Id);
            else if (conductor.Make.Insulation?.Volts < volts)
                yield return new Finding(
                    Id,
                    FindingSeverity.Error,
                    [conductor.Id],
                    $"{conductor.Id} from {conductor.From} to {conductor.To} is insulated for {ReviewContext.Number(conductor.Make.Insulation!.Value.Volts)} V and meets {ReviewContext.Number(volts)} V {where}.",
                    "Take a conductor insulated for the highest voltage (300/500 V for mains), or part the circuits.",
                    "IEC 60204-1 clauses 12.3 and 13.1.3")
                {
                    Numbers = [new("insulation", conductor.Make.Insulation!.Value.Volts, "V"), new("voltage", volts, "V")],
                };
        }

        foreach (var finding in NotKnown.Of(this, unknown, "the rated voltage of the insulation", "insulation: 300 V"))
            yield return finding;
    }

    private static HashSet<string> MixedRoutes(ReviewContext context) =>
    [
        .. context.Design.Conductors.Where(context.IsMains).SelectMany(conductor => conductor.Route)
            .Except(context.Design.Routes.Where(route => route.Partition).Select(route => route.Name), StringComparer.Ordinal),
    ];

    private static (double Volts, string Where) Highest(ReviewContext context, Conductor conductor, HashSet<string> mixed)
    {
        var mains = context.Design.Mains!.Voltage.Volts;
        if (context.IsMains(conductor))
            return (mains, "in itself");
        // A bond has no voltage of its own, and no need to be insulated from what it protects against.
        if (conductor.Colour != ConductorColour.GreenYellow && conductor.Route.FirstOrDefault(mixed.Contains) is { } route)
            return (mains, $"beside it in {route}");
        var own = context.SuppliesAt(context.Wiring.TerminalNode(conductor.From)).Select(reach => reach.Supply.Volts).DefaultIfEmpty(0).Max();
        return (own, "in itself");
    }
}
