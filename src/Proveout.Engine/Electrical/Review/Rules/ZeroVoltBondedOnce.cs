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
}
