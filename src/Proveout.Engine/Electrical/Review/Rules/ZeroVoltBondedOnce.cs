using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Zero volt is bonded to protective earth once, or not at all.</summary>
internal sealed class ZeroVoltBondedOnce : IReviewRule
{
    public string Id => "zero-volt-bonded-once";

    public string Words => "0 V bonded to protective earth once or not at all";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var between = context.Design.Conductors
            .Where(conductor => IsProtective(context, conductor.From) != IsProtective(context, conductor.To))
            .ToArray();
        var leftOut = between.Select(conductor => conductor.Id).ToHashSet(StringComparer.Ordinal);
        var islands = new Islands(
            context.Wiring.Nodes.Count,
            context.Wiring.Elements
                .Where(element => element.IsMetal && !(element.Kind == ElementKind.Copper && leftOut.Contains(element.Subject)))
                .Select(element => (element.A, element.B)));
        var zero = Islands(context, islands, TerminalRole.ZeroVolt);
        var bonds = between.ToLookup(conductor => islands.Of(context.Wiring.TerminalNode(IsProtective(context, conductor.From) ? conductor.To : conductor.From)));
        foreach (var island in zero)
            if (bonds[island].ToArray() is { Length: > 1 } several)
                yield return Found(several);
        var isBonded = zero.Any(bonds.Contains);
        if (context.Settings.Takes(ReviewQuestions.ZeroVolt, "bonded") && !isBonded && zero.Count > 0)
            yield return Otherwise([], "bonded to protective earth, and no conductor bonds it", "Run one green-yellow conductor from 0 V to the earth bar.");
        else if (context.Settings.Takes(ReviewQuestions.ZeroVolt, "floating") && isBonded)
            yield return Otherwise(
                [.. zero.SelectMany(island => bonds[island]).Select(bond => bond.Id)], "floating, and a conductor bonds it to protective earth", "Take the bond away, or choose the other.");
    }

    private static bool IsProtective(ReviewContext context, TerminalReference end) =>
        context.Design.FindTerminal(end)!.Role == TerminalRole.ProtectiveEarth;

    private static HashSet<int> Islands(ReviewContext context, Islands islands, TerminalRole role) =>
    [
        .. context.Design.Terminals
            .Where(terminal => context.Design.FindTerminal(terminal)!.Role == role)
            .Select(terminal => islands.Of(context.Wiring.TerminalNode(terminal))),
    ];

    private Finding Found(Conductor[] bonds) => new(
        Id,
        FindingSeverity.Warning,
        [.. bonds.Select(bond => bond.Id)],
        $"0 V is bonded to protective earth {bonds.Length} times, by {PathWords.List([.. bonds.Select(bond => bond.Id)])}: load current takes the way over the protective conductor.",
        "Keep one bond, at the supply, and take the others away.",
        "IEC 60204-1 clause 9.4.3.1; one point, common practice");

    private Finding Otherwise(ValueList<string> subjects, string what, string fix) => new(
        Id, FindingSeverity.Warning, subjects, $"The machine file chooses 0 V {what}.", fix, "IEC 60204-1 clause 6.4; chosen by the builder");
}
