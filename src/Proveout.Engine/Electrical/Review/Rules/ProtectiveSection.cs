using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A protective conductor is as thick as the line conductors of the part that it protects, or of the machine where the part has none.</summary>
internal sealed class ProtectiveSection : IReviewRule
{
    public string Id => "protective-cross-section";

    public string Words => "protective conductors as thick as the line conductors";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var lines = context.Design.Conductors.Where(conductor => context.Context.ClassOf(conductor) == NetClass.Line).ToArray();
        if (lines.Length == 0)
            yield break;
        foreach (var conductor in context.Design.Conductors.Where(conductor => IsProtective(context, conductor)))
        {
            var protectedLines = lines.Where(line => Touches(line, conductor.To.Part) || Touches(line, conductor.From.Part)).ToArray();
            var thickest = (protectedLines.Length > 0 ? protectedLines : lines).MaxBy(line => line.CrossSection.SquareMillimeters)!;
            var least = Least(thickest.CrossSection.SquareMillimeters);
            if (conductor.CrossSection.SquareMillimeters < least - 1e-9)
                yield return new Finding(
                    Id,
                    FindingSeverity.Error,
                    [conductor.Id, thickest.Id],
                    $"Protective conductor {conductor.Id} from {conductor.From} to {conductor.To} has {ReviewContext.Number(conductor.CrossSection.SquareMillimeters, 2)} mm²; line conductor {thickest.Id} has {ReviewContext.Number(thickest.CrossSection.SquareMillimeters, 2)} mm².",
                    $"Take {ReviewContext.Number(least, 2)} mm² or more.",
                    "IEC 60364-5-54 table 54.2; IEC 60204-1 table 1");
        }
    }

    /// <summary>Least cross-section for line conductors of a cross-section, both in mm², same material.</summary>
    internal static double Least(double lineSquareMillimetres) => lineSquareMillimetres switch
    {
        <= 16 => lineSquareMillimetres,
        <= 35 => 16,
        _ => lineSquareMillimetres / 2,
    };

    private static bool Touches(Conductor line, string part) => line.From.Part == part || line.To.Part == part;

    private static bool IsProtective(ReviewContext context, Conductor conductor) =>
        context.Design.FindTerminal(conductor.From)!.Role == TerminalRole.ProtectiveEarth
        && context.Design.FindTerminal(conductor.To)!.Role == TerminalRole.ProtectiveEarth;
}
