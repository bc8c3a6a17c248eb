namespace Proveout.Engine.Machine;

/// <summary>The names on a part type that others refer to.</summary>
/// <remarks>
/// Of a type with problems of its own, names that could not be read count too, so that one slip is not reported at every place that refers to it.
/// </remarks>
internal sealed class TypeMembers
{
    public TypeMembers(PartType type, Node? node = null)
    {
        Terminals = Names(type.Terminals.Select(terminal => terminal.Name), node, "terminals");
        Controls = Names(type.Controls.Select(control => control.Name), node, "controls");
        Jumpers = Names(type.Jumpers.Select(jumper => jumper.Name), node, "jumpers");
        Elements = Names(type.Circuit.Where(HasResistance).Select(element => element.Name), node, "circuit");
        Type = type;
    }

    public PartType Type { get; }

    public IReadOnlySet<string> Terminals { get; }

    public IReadOnlySet<string> Controls { get; }

    public IReadOnlySet<string> Jumpers { get; }

    /// <summary>Elements whose resistance a machine may give anew.</summary>
    public IReadOnlySet<string> Elements { get; }

    private static bool HasResistance(CircuitElement element) => element is Resistor or Fuse or Contact or Unpredictable;

    private static HashSet<string> Names(IEnumerable<string> read, Node? type, string key)
    {
        var names = new HashSet<string>(read, StringComparer.Ordinal);
        if (type?.Find(key) is MappingNode section)
            names.UnionWith(section.Entries.Where(entry => key != "circuit" || entry is not MappingNode).Select(entry => entry.Name));
        return names;
    }
}
