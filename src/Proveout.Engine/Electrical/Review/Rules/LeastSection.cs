using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Conductors inside an enclosure are not thinner than what they are for allows: a thin one breaks at its end before it gets warm.</summary>
/// <remarks>Leads of small motors count as control circuits here: what they bear by current is another rule's.</remarks>
internal sealed class LeastSection : IReviewRule
{
    // IEC 60204-1 table 5, inside enclosures: flexible single cores for power and control, and cores of data cables.
    private const double PowerSquareMillimetres = 0.75;
    private const double ControlSquareMillimetres = 0.2;
    private const double DataSquareMillimetres = 0.08;

    public string Id => "least-cross-section";

    public string Words => "at least 0.75 mm² in power circuits inside enclosures, 0.2 mm² in control circuits, 0.08 mm² in data cables";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var heating = context.Loads
            .Where(load => context.Design.FindPart(load.Element.Subject)!.Type.ClassLetter == "E")
            .Select(load => load.Element.Subject)
            .ToHashSet(StringComparer.Ordinal);
        var loaded = context.Loads.SelectMany(load => new[] { load.Fed, load.Returned }).ToHashSet();
        foreach (var conductor in context.Design.Conductors.Where(conductor => conductor.CrossSection.SquareMillimeters < PowerSquareMillimetres - 1e-9))
        {
            var isHeater = (heating.Contains(conductor.From.Part) || heating.Contains(conductor.To.Part)) && Ends(context, conductor).Any(loaded.Contains);
            var (circuit, least) = context.IsMains(conductor) ? ("a mains circuit", PowerSquareMillimetres)
                : isHeater ? ("a heater circuit", PowerSquareMillimetres)
                : IsInDataLead(context, conductor) ? ("a data lead", DataSquareMillimetres)
                : ("a control circuit", ControlSquareMillimetres);
            if (conductor.CrossSection.SquareMillimeters < least - 1e-9)
                yield return Found(conductor, context.IsMains(conductor), circuit, least);
        }
    }

    private static int[] Ends(ReviewContext context, Conductor conductor) =>
        [context.Wiring.TerminalNode(conductor.From), context.Wiring.TerminalNode(conductor.To)];

    // The supply cores of a data lead are as thin as the others.
    private static bool IsInDataLead(ReviewContext context, Conductor conductor) => HasData(context, conductor.From) && HasData(context, conductor.To);

    private static bool HasData(ReviewContext context, TerminalReference end)
    {
        var type = context.Design.FindPart(end.Part)!.Type;
        var beside = type.Connectors.FirstOrDefault(connector => connector.Terminals.Contains(end.Terminal))?.Terminals ?? [end.Terminal];
        return beside.Any(name => type.FindTerminal(name)!.Role == TerminalRole.Data);
    }

    private Finding Found(Conductor conductor, bool isMains, string circuit, double least) => new(
        Id,
        isMains ? FindingSeverity.Error : FindingSeverity.Note,
        [conductor.Id],
        $"{conductor.Id} from {conductor.From} to {conductor.To} is in {circuit} and has {ReviewContext.Number(conductor.CrossSection.SquareMillimeters, 2)} mm², less than {ReviewContext.Number(least, 2)} mm².",
        $"Take {ReviewContext.Number(least, 2)} mm² or more.",
        "IEC 60204-1 table 5, inside enclosures")
    {
        Numbers = [new("cross-section", conductor.CrossSection.SquareMillimeters, "mm²"), new("least", least, "mm²")],
    };
}
