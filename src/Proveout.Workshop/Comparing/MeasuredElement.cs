using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>An element of the wiring network by names, so that it can be found again in another design.</summary>
internal sealed record MeasuredElement(
    ElementKind Kind, string Ends, double LowOhms, double NominalOhms, double HighOhms, string Subject, CircuitElement? Part)
{
    public static MeasuredElement Of(WiringNetwork wiring, NetworkElement element, IReadOnlyDictionary<string, string> renamed)
    {
        var isConductor = element.Kind is ElementKind.Copper or ElementKind.Joint;
        string[] ends = [NameOf(wiring.Nodes[element.A], renamed), NameOf(wiring.Nodes[element.B], renamed)];
        return new(
            element.Kind,
            string.Join(" - ", ends.Order(StringComparer.Ordinal)),
            element.LowOhms,
            element.NominalOhms,
            element.HighOhms,
            isConductor ? renamed.GetValueOrDefault(element.Subject, element.Subject) : element.Subject,
            element.Part);
    }

    private static string NameOf(NetworkNode node, IReadOnlyDictionary<string, string> renamed) =>
        (node.Kind == NodeKind.ConductorEnd ? node with { Subject = renamed.GetValueOrDefault(node.Subject, node.Subject) } : node).ToString();
}
