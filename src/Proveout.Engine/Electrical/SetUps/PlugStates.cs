using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The states of plugs that matter for a reading between two terminals: what it shows depends on what is plugged.</summary>
public static class PlugStates
{
    private const double SecondsAPlug = 6;

    /// <summary>All plugs mated; each plug at the two terminals, or at the far end of their conductors, pulled alone; all plugs apart.</summary>
    /// <param name="design">The machine.</param>
    /// <param name="one">A terminal.</param>
    /// <param name="other">Another one.</param>
    public static IReadOnlyList<ElectricalSetUp> About(MachineDesign design, TerminalReference one, TerminalReference other)
    {
        var all = DeadSetUps.Of(design);
        var mated = all.First(setUp => setUp.Text.Id == DeadSetUps.Mated);
        return
        [
            mated,
            .. PlugsAt(design, one).Concat(PlugsAt(design, other)).Distinct().Select(plug => Pulled(mated, plug.Part, plug.Connector)),
            all.First(setUp => setUp.Text.Id == DeadSetUps.Apart),
        ];
    }

    private static ElectricalSetUp Pulled(ElectricalSetUp mated, string part, string connector) => new(
        new SetUp(
            $"{part}-{connector}-pulled".ToLowerInvariant().Replace(' ', '-'),
            $"Only plug {connector} of {part} pulled",
            [.. mated.Text.Instructions, $"Then pull plug {connector} of {part}, and no other."],
            mated.Text.Cautions,
            SecondsAPlug),
        MachineState.WithPulled((part, connector)),
        null);

    private static IEnumerable<(string Part, string Connector)> PlugsAt(MachineDesign design, TerminalReference terminal) =>
        from end in design.Conductors
            .Where(conductor => conductor.From == terminal || conductor.To == terminal)
            .SelectMany(conductor => new[] { conductor.From, conductor.To })
            .Prepend(terminal)
        let connector = design.FindPart(end.Part)?.Type.ConnectorOf(end.Terminal)
        where connector is { Pluggable: true }
        select (end.Part, connector.Name);
}
