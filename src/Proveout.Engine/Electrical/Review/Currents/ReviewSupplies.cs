using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What feeds the wiring: the mains at its inlets, and every source inside a part.</summary>
internal static class ReviewSupplies
{
    public static IEnumerable<Supply> Of(ReviewContext context) => Mains(context.Wiring).Concat(Sources(context));

    private static IEnumerable<Supply> Mains(WiringNetwork wiring)
    {
        if (wiring.Design.Mains is not { } mains)
            yield break;
        foreach (var (part, connector) in MainsInlets.Of(wiring.Design))
            if (MainsInlets.Find(part, connector, TerminalRole.Line) is { } line && MainsInlets.Find(part, connector, TerminalRole.Neutral) is { } neutral)
                yield return new Supply(
                    $"the mains at {part.Designation}",
                    wiring.LandingNode(line),
                    wiring.LandingNode(neutral),
                    mains.Voltage.Volts,
                    double.PositiveInfinity,
                    IsMains: true);
    }

    private static IEnumerable<Supply> Sources(ReviewContext context) =>
        from part in context.Design.Parts
        from source in part.Type.Circuit.OfType<Source>()
        let plus = context.FindNode(part.Designation, source.A)
        let zero = context.FindNode(part.Designation, source.B)
        where plus is not null && zero is not null
        select new Supply(
            $"the {ReviewContext.Number(source.Voltage.Volts)} V of {part.Designation}",
            plus.Value,
            zero.Value,
            source.Voltage.Volts,
            source.Limit?.Amperes ?? double.PositiveInfinity,
            IsMains: false)
        {
            Part = part,
            Source = source,
        };
}
