using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The capacitors that a meter charges before its reading stands.</summary>
internal sealed class PortCapacitors
{
    // A meter's milliampere charges less than this within a blink.
    private const double SmallestFarads = 0.1e-6;

    private readonly List<(int A, int B, string Part, Capacitor Capacitor)> _all = [];

    public PortCapacitors(WiringNetwork wiring)
    {
        var nodes = wiring.Nodes
            .Where(node => node.Kind is NodeKind.Terminal or NodeKind.Inside)
            .ToDictionary(node => (node.Subject, node.Place), node => node.Index);
        foreach (var part in wiring.Design.Parts)
            foreach (var capacitor in part.Type.Circuit.OfType<Capacitor>())
                if (capacitor.Value.Farads >= SmallestFarads
                    && nodes.TryGetValue((part.Designation, capacitor.A), out var a)
                    && nodes.TryGetValue((part.Designation, capacitor.B), out var b))
                    _all.Add((a, b, part.Designation, capacitor));
    }

    /// <summary>The largest capacitor between two different nets of a way, as <c>power-capacitor of A1</c>; null when there is none.</summary>
    public string? Across(IReadOnlySet<int> nets, MetalNets metal) =>
        _all
            .Where(item => metal.Of(item.A) != metal.Of(item.B) && nets.Contains(metal.Of(item.A)) && nets.Contains(metal.Of(item.B)))
            .OrderByDescending(item => item.Capacitor.Value.Farads)
            .Select(item => $"{item.Capacitor.Name} of {item.Part}")
            .FirstOrDefault();
}
