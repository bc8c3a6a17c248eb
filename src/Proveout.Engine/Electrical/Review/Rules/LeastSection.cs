using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Power circuits inside an enclosure have at least 0.75 mm².</summary>
internal sealed class LeastSection : IReviewRule
{
    private const double PowerSquareMillimetres = 0.75;

    public string Id => "least-cross-section";

    public string Words => "at least 0.75 mm² in power circuits inside enclosures";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var heating = context.Loads
            .Where(load => context.Design.FindPart(load.Element.Subject)!.Type.ClassLetter == "E")
            .Select(load => load.Element.Subject)
            .ToHashSet(StringComparer.Ordinal);
        var loaded = context.Loads.SelectMany(load => new[] { load.Fed, load.Returned }).ToHashSet();
        foreach (var conductor in context.Design.Conductors.Where(conductor => conductor.CrossSection.SquareMillimeters < PowerSquareMillimetres - 1e-9))
        {
            var isMains = context.IsMains(conductor);
            if (isMains || heating.Contains(conductor.From.Part) || heating.Contains(conductor.To.Part))
                if (isMains || Ends(context, conductor).Any(loaded.Contains))
                    yield return Found(conductor, isMains);
        }
    }

    private static int[] Ends(ReviewContext context, Conductor conductor) =>
        [context.Wiring.TerminalNode(conductor.From), context.Wiring.TerminalNode(conductor.To)];

    private Finding Found(Conductor conductor, bool isMains) => new(
        Id,
        isMains ? FindingSeverity.Error : FindingSeverity.Note,
        [conductor.Id],
        $"{conductor.Id} from {conductor.From} to {conductor.To} is in a {(isMains ? "mains" : "heater")} circuit and has {ReviewContext.Number(conductor.CrossSection.SquareMillimeters, 2)} mm², less than 0.75 mm².",
        "Take 0.75 mm² or more.",
        "IEC 60204-1 table 5, power circuits inside enclosures");
}
