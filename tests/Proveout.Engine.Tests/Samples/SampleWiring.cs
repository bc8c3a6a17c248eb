using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Samples;

/// <summary>What is joined to what, by conductors and by what conducts inside parts with their controls at rest.</summary>
internal sealed class SampleWiring
{
    private static readonly Dictionary<string, string> AtRest = [];

    private readonly Dictionary<string, string> _parent = [];

    private SampleWiring()
    {
    }

    /// <summary>Joins conductors, and elements whose highest resistance stays at or below a limit.</summary>
    /// <param name="design">The machine.</param>
    /// <param name="highestOhms">Limit for resistors and fuses.</param>
    /// <param name="without">Conductors to leave out; none when null.</param>
    /// <param name="operated">Positions of controls that are not at rest, under <c>PART.CONTROL</c>.</param>
    public static SampleWiring Of(
        MachineDesign design,
        double highestOhms,
        Func<Conductor, bool>? without = null,
        IReadOnlyDictionary<string, string>? operated = null)
    {
        var wiring = new SampleWiring();
        foreach (var conductor in design.Conductors.Where(conductor => without?.Invoke(conductor) != true))
            wiring.Join(conductor.From.ToString(), conductor.To.ToString());
        foreach (var part in design.Parts)
            foreach (var element in part.Type.Circuit.Where(element => Conducts(part, element, highestOhms, operated ?? AtRest)))
                wiring.Join($"{part.Designation}.{element.A}", $"{part.Designation}.{element.B}");
        return wiring;
    }

    public bool Joined(string a, string b) => Find(a) == Find(b);

    private static bool Conducts(Part part, CircuitElement element, double highestOhms, IReadOnlyDictionary<string, string> operated) => element switch
    {
        Resistor resistor => resistor.Value.High is { } high && high.Ohms <= highestOhms,
        Fuse fuse => fuse.Value.High is { } high && high.Ohms <= highestOhms,
        Contact contact => contact.ClosedAt.Contains(operated.GetValueOrDefault(
            $"{part.Designation}.{contact.Control}",
            part.Type.Controls.Single(control => control.Name == contact.Control).Rest)),
        _ => false,
    };

    private void Join(string a, string b) => _parent[Find(a)] = Find(b);

    private string Find(string node)
    {
        while (_parent.TryGetValue(node, out var parent) && parent != node)
            node = parent;
        return node;
    }
}
