using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A stage of energising: what is still apart, and which states of the controls are tried then.</summary>
/// <param name="Name">In plain words.</param>
/// <param name="Apart">Numbers of the elements of the wiring network that are open: matings and joints.</param>
/// <param name="States">The states to look at; null for all of them.</param>
public sealed record LiveStage(string Name, IReadOnlySet<int> Apart, IReadOnlyList<ControlState>? States = null)
{
    /// <summary>A stage with some connectors apart: plugs pulled, or on a fixed connector the conductors taken off.</summary>
    /// <param name="context">The wiring.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="connectors">Part and connector of each that is apart.</param>
    /// <param name="states">The states to look at; null for all of them.</param>
    public static LiveStage WithApart(
        WiringContext context, string name, IEnumerable<(string Part, string Connector)> connectors, IReadOnlyList<ControlState>? states = null)
    {
        var apart = new HashSet<int>();
        foreach (var (part, connector) in connectors)
        {
            var found = context.Design.FindPart(part)!.Type.Connectors.First(candidate => candidate.Name == connector);
            foreach (var terminal in found.Terminals.Select(terminal => new TerminalReference(part, terminal)))
                if (found.Pluggable)
                    apart.Add(context.MatingOf(terminal).Index);
                else
                    apart.UnionWith(context.ConductorsAt(terminal).Select(conductor => context.JointOf(conductor, terminal).Index));
        }

        return new(name, apart, states);
    }

    /// <summary>By its name alone, which tells the stages of one machine apart.</summary>
    public override int GetHashCode() => Name.GetHashCode(StringComparison.Ordinal);
}
