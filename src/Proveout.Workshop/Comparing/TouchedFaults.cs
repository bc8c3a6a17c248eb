using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Mistakes that the work of a change may have brought in, or taken away: those of what was changed, and those at its terminals.</summary>
internal static class TouchedFaults
{
    /// <summary>For each fault of a machine, whether the change touches it.</summary>
    /// <param name="campaign">The campaign of the machine.</param>
    /// <param name="changes">What was changed.</param>
    /// <param name="oldNames">Old identifiers of conductors by their new ones.</param>
    public static bool[] Of(WiringCampaign campaign, IReadOnlyList<DesignChange> changes, IReadOnlyDictionary<string, string> oldNames)
    {
        var done = changes.Where(change => !change.IsOnPaperOnly || change is { Kind: ChangeKind.PartRenamed, Subjects.Count: > 1 }).ToArray();
        var jumpers = done.Where(change => change.Kind == ChangeKind.JumperChanged).SelectMany(change => change.Subjects).ToHashSet(StringComparer.Ordinal);
        var handled = done.Where(change => change.Kind != ChangeKind.JumperChanged).ToArray();
        var names = handled
            .SelectMany(change => change.Subjects)
            .SelectMany(name => new[] { name, oldNames.GetValueOrDefault(name, name) })
            .ToHashSet(StringComparer.Ordinal);
        var nodes = NodesOf(campaign.Context.Wiring, handled.SelectMany(change => change.Terminals));
        return
        [
            .. campaign.Faults.Select(fault =>
                fault.Fault.Subjects.Any(names.Contains)
                || (fault.Fault.Kind.StartsWith("jumper", StringComparison.Ordinal) && fault.Fault.Subjects.Any(jumpers.Contains))
                || fault.Changes.SelectMany(change => change.NodesIn(campaign.Context.Wiring)).Any(nodes.Contains)),
        ];
    }

    private static HashSet<int> NodesOf(WiringNetwork wiring, IEnumerable<TerminalReference> terminals) =>
    [
        .. terminals
            .Where(terminal => wiring.Design.FindTerminal(terminal) is not null)
            .SelectMany(terminal => new[] { wiring.TerminalNode(terminal), wiring.LandingNode(terminal) }),
    ];
}
