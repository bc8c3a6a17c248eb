using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Workshop;

/// <summary>Makes the design that a machine was in fact built to.</summary>
internal static class AsWiredDesign
{
    /// <summary>The design with a mistake made; null when the mistake does not fit it.</summary>
    public static MachineDesign? With(MachineDesign design, AsWiredMistake mistake)
    {
        var made = Made(design, mistake);
        return made is not null && !made.Equals(design) && made.Conductors.All(conductor => Exists(made, conductor.From) && Exists(made, conductor.To))
            ? made
            : null;
    }

    private static MachineDesign? Made(MachineDesign design, AsWiredMistake mistake) =>
        (mistake.Kind, mistake.At("conductor"), mistake.At("conductors"), mistake.TerminalsAt("at")) switch
        {
            ("conductor-missing", [var id], _, _) =>
                design with { Conductors = design.Conductors.Where(conductor => conductor.Id != id).ToValueList() },
            ("end-on-neighbour", [var id], _, [var at]) when mistake.TerminalsAt("lands-on") is [var other] =>
                Landed(design, (conductor, terminal) => conductor == id && terminal == at ? other : terminal),
            ("ends-swapped", _, [var one, var two], [var at, var other]) =>
                Landed(design, (conductor, terminal) =>
                    conductor == one && terminal == at ? other
                    : conductor == two && terminal == other ? at
                    : terminal),
            ("bridge", _, _, _) when mistake.TerminalsAt("terminals") is [var a, var b] => Bridged(design, a, b),
            ("connectors-exchanged", _, _, _) when mistake.TerminalsAt("connectors") is [var one, var two] => Exchanged(design, one, two),
            _ => OfPart(design, mistake),
        };

    private static MachineDesign? OfPart(MachineDesign design, AsWiredMistake mistake)
    {
        if (mistake.At("part") is not [var name] || design.FindPart(name) is not { } part)
            return null;
        return (mistake.Kind, mistake.At("jumper"), mistake.At("position"), mistake.At("element"), mistake.At("value")) switch
        {
            ("jumper-missing", [var jumper], _, _, _) => With(design, part with { Jumpers = Others(part, jumper).ToValueList() }),
            ("jumper-wrong", [var jumper], [var position], _, _) when HasPosition(part, jumper, position) =>
                With(design, part with { Jumpers = [.. Others(part, jumper), new JumperSetting(jumper, position)] }),
            ("wrong-value", _, _, [var element], [var value]) when QuantityText.TryParseBand(value, out var band) && part.Type.Circuit.Any(item => item.Name == element) =>
                With(design, part with { Values = [.. part.Values.Where(item => item.Element != element), new ElementValue(element, band)] }),
            ("reversed-part", _, _, _, _) when part.Type.Terminals is [var first, var second] =>
                Landed(design, (_, terminal) => terminal.Part != name ? terminal : terminal with { Terminal = terminal.Terminal == first.Name ? second.Name : first.Name }),
            _ => null,
        };
    }

    private static MachineDesign With(MachineDesign design, Part part) =>
        design with { Parts = design.Parts.Select(other => other.Designation == part.Designation ? part : other).ToValueList() };

    private static MachineDesign Landed(MachineDesign design, Func<string, TerminalReference, TerminalReference> landing) => design with
    {
        Conductors =
        [
            .. design.Conductors.Select(conductor => conductor with
            {
                From = landing(conductor.Id, conductor.From),
                To = landing(conductor.Id, conductor.To),
            }),
        ],
    };

    // A strand or a splash of solder: as short as a terminal is wide, and no thicker than a strand's bundle.
    private static MachineDesign Bridged(MachineDesign design, TerminalReference a, TerminalReference b) => design with
    {
        Conductors =
        [
            .. design.Conductors,
            new Conductor($"bridge {a} {b}", a, b, Area.FromSquareMillimeters(0.25), ConductorColour.Black, Length.FromMillimeters(10), []),
        ],
    };

    private static MachineDesign? Exchanged(MachineDesign design, TerminalReference one, TerminalReference two) =>
        (ConnectorOf(design, one), ConnectorOf(design, two)) is ({ } first, { } second) && first.Terminals.Count == second.Terminals.Count
            ? Landed(design, (_, terminal) => Across(terminal, one.Part, first, two.Part, second) ?? Across(terminal, two.Part, second, one.Part, first) ?? terminal)
            : null;

    private static TerminalReference? Across(TerminalReference terminal, string part, Connector from, string otherPart, Connector to) =>
        terminal.Part == part && from.Terminals.Contains(terminal.Terminal, StringComparer.Ordinal)
            ? new TerminalReference(otherPart, to.Terminals[from.Terminals.TakeWhile(name => name != terminal.Terminal).Count()])
            : null;

    private static Connector? ConnectorOf(MachineDesign design, TerminalReference name) =>
        design.FindPart(name.Part)?.Type.Connectors.FirstOrDefault(connector => connector.Name == name.Terminal);

    private static IEnumerable<JumperSetting> Others(Part part, string jumper) => part.Jumpers.Where(setting => setting.Jumper != jumper);

    private static bool HasPosition(Part part, string jumper, string position) =>
        part.Type.Jumpers.Any(candidate => candidate.Name == jumper && candidate.Positions.Any(other => other.Name == position));

    private static bool Exists(MachineDesign design, TerminalReference terminal) => design.FindTerminal(terminal) is not null;
}
