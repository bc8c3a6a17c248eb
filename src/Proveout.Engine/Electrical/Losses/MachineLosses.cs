using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Heat that some parts of a machine give off, by what their types say and what flows through them.</summary>
/// <param name="Lines">Every loss that is known.</param>
/// <param name="Supplies">What is asked of each supply among the parts.</param>
/// <param name="Switches">Electronic switches among the parts whose types say how they warm up.</param>
/// <param name="NotKnown">Parts that may give off heat and whose types do not say how much, with what they do not say.</param>
public sealed record MachineLosses(
    IReadOnlyList<LossLine> Lines, IReadOnlyList<SupplyLoss> Supplies, IReadOnlyList<SwitchLoss> Switches, IReadOnlyList<(string Part, string What)> NotKnown)
{
    /// <summary>Class letters of IEC 81346-2 whose parts turn current into heat.</summary>
    private const string Warm = "AEGKMPQT";

    /// <summary>The losses of parts that are together in one place.</summary>
    /// <param name="design">The machine.</param>
    /// <param name="parts">The parts.</param>
    /// <param name="reachMetres">Length of a conductor that may lie in the place when only one of its ends does.</param>
    public static MachineLosses Of(MachineDesign design, IReadOnlyList<Part> parts, double reachMetres)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var context = new ReviewContext(WiringNetworkBuilder.Build(design));
        var inside = parts.Select(part => part.Designation).ToHashSet(StringComparer.Ordinal);
        LossLine[] lines =
        [
            .. SupplyLosses.Lines(context, inside),
            .. LoadLosses.Lines(context, inside),
            .. CopperLosses.Lines(context, inside, reachMetres),
        ];
        return new(
            [.. lines.Where(line => line.WorkWatts > 0)],
            [.. SupplyLosses.Asked(context, inside)],
            [.. LoadLosses.Switches(context, inside)],
            [.. NotKnownOf(context, parts, inside, lines)]);
    }

    private static IEnumerable<(string Part, string What)> NotKnownOf(ReviewContext context, IReadOnlyList<Part> parts, HashSet<string> inside, LossLine[] lines)
    {
        var without = SupplyLosses.WithoutEfficiency(context, inside).ToHashSet(StringComparer.Ordinal);
        foreach (var part in parts)
            if (without.Contains(part.Designation))
                yield return (part.Designation, $"its type {part.Type.Id} does not say its efficiency");
            else if (Warm.Contains(part.Type.ClassLetter[0], StringComparison.Ordinal) && !lines.Any(line => line.Part == part.Designation && line.WorkWatts > 0))
                yield return (part.Designation, $"its type {part.Type.Id} does not say what it takes");
    }
}
