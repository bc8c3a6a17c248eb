using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Short sentences on what makes a right reading look wrong, or a wrong one right.</summary>
internal sealed class ReadingCautions(WiringNetwork wiring, MetalNets metal)
{
    // Buzzers sound below some 20 to 100 ohm; fingers on both tips are 0.1 to 1 megohm. Common practice.
    private const double BuzzerOhms = 100;
    private const double FingerOhms = 20e3;

    private readonly PortCapacitors _capacitors = new(wiring);

    /// <summary>The sentences for the ways of a reading, each with a space before it; empty when there is nothing to mind.</summary>
    public string For(params ReadingPath[] paths) =>
        string.Concat(Sentences(paths).Select(sentence => " " + sentence));

    private IEnumerable<string> Sentences(ReadingPath[] paths)
    {
        if (paths.All(path => path.IsMetal))
            yield break;
        if (_capacitors.Across(paths.SelectMany(path => path.Nodes).Select(metal.Of).ToHashSet(), metal) is { } capacitor)
            yield return $"The reading climbs while {capacitor} charges: wait until it stands.";
        if (paths[0].Elements.Any(IsSolidStateRelay))
            yield return "A solid-state relay stays open to a meter even while commanded on; only a shorted one reads low.";
        if (paths[0].Elements.Any(IsWinding))
            yield return "Copper reads 4 % more for every 10 K that it is warmer.";
        if (paths[0] is { PassesInsulation: false, PassesJunction: false, NominalOhms: < BuzzerOhms })
            yield return "A buzzer sounds here too, so read the number.";
        if (paths[0] is { PassesInsulation: false, NominalOhms: > FingerOhms })
            yield return "Keep fingers off the tips.";
    }

    // Insulation between two line terminals of one part is what a dead meter sees of a switch without contacts.
    private bool IsSolidStateRelay(NetworkElement element) =>
        element.Part is Insulation && RoleOf(element.A) == TerminalRole.Line && RoleOf(element.B) == TerminalRole.Line;

    private bool IsWinding(NetworkElement element) =>
        element.Part is Resistor && RoleOf(element.A) == TerminalRole.Winding && RoleOf(element.B) == TerminalRole.Winding;

    private TerminalRole? RoleOf(int node) =>
        wiring.Nodes[node] is { Kind: NodeKind.Terminal } at ? wiring.Design.FindTerminal(new TerminalReference(at.Subject, at.Place))?.Role : null;
}
