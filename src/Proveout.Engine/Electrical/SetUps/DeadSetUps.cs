using System.Globalization;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The states in which a machine is measured with every supply off.</summary>
public static class DeadSetUps
{
    /// <summary>Identifier of the state with every plug apart.</summary>
    public const string Apart = "apart";

    /// <summary>Identifier of the state with every plug mated.</summary>
    public const string Mated = "mated";

    private const double SecondsAPlug = 6;
    private const double SecondsAControl = 5;

    /// <summary>All set-ups of a machine, in the order to do them: plugs apart, each control operated with plugs apart, all plugs mated.</summary>
    public static IReadOnlyList<ElectricalSetUp> Of(MachineDesign design)
    {
        var cautions = Cautions(design);
        return
        [
            new(ApartText(design, cautions), new MachineState(true, []), null),
            .. Operable(design).Select(control => Operated(control, cautions)),
            new(MatedText(design, cautions), new MachineState(false, []), null),
        ];
    }

    // Safe isolation as common practice and EN 50110-1 clause 6.2 order it: disconnect, secure, prove dead, earth or discharge, cover neighbours.
    private static ValueList<string> Cautions(MachineDesign design) => design.Mains is null
        ?
        [
            "Unplug the external supply and keep its plug in sight. All of this is measured with the machine dead.",
            "Wait a minute for capacitors before the first reading, and measure volts before you measure ohms.",
        ]
        :
        [
            "Pull the mains plug and keep it in sight, or lock the supply off. All of this is measured with the machine dead.",
            "Prove dead between L, N and PE with a two-pole voltage indicator that you have tried on a known live source before and after.",
            "Wait five minutes for capacitors before you touch supply terminals. Do not open a power supply.",
            "One person alone plugs in, and says so. Mains work may be reserved to licensed persons where you live: local codes come first.",
        ];

    private static SetUp ApartText(MachineDesign design, ValueList<string> cautions)
    {
        var plugs = design.Parts.Sum(part => part.Type.Connectors.Count(connector => connector.Pluggable));
        return new SetUp(
            Apart,
            "All plugs apart",
            [
                $"Pull every pluggable connector apart ({plugs.ToString(CultureInfo.InvariantCulture)} of them); leave each plug beside its socket.",
                .. RestInstructions(design),
            ],
            cautions,
            SecondsAPlug * plugs / 3);
    }

    private static SetUp MatedText(MachineDesign design, ValueList<string> cautions)
    {
        var plugs = design.Parts.Sum(part => part.Type.Connectors.Count(connector => connector.Pluggable));
        return new SetUp(
            Mated,
            "All plugs mated, still dead",
            ["Mate every plug with the socket that bears its name. The supply stays unplugged.", .. RestInstructions(design)],
            cautions,
            SecondsAPlug * plugs);
    }

    private static ElectricalSetUp Operated(OperatedControl control, ValueList<string> cautions) => new(
        new SetUp(
            $"{control.Part}-{control.Control}-{control.Position}".ToLowerInvariant().Replace(' ', '-'),
            $"{control.Part}: {control.Control} {control.Position}",
            [$"Plugs stay apart. Set or hold {control.Control} of {control.Part} to: {control.Position}, for this reading only; then back to where it was."],
            cautions,
            SecondsAControl),
        new MachineState(true, [(control.Part, control.Control, control.Position)]),
        control);

    // A control's first position is how it stands when nobody has touched it.
    private static IEnumerable<string> RestInstructions(MachineDesign design) =>
        (from part in design.Parts
         from control in part.Type.Controls
         where control.Rest != control.Positions[0]
         where part.Type.Circuit.OfType<Contact>().Any(contact => contact.Control == control.Name)
         select $"Set {control.Name} of {part.Designation} ({part.Name}) to: {control.Rest}.")
        .Append("Leave every other switch, button and relay alone: nothing pressed, nothing latched, nothing held in.");

    private static IEnumerable<OperatedControl> Operable(MachineDesign design) =>
        from part in design.Parts
        from control in part.Type.Controls
        from position in control.Positions
        where position != control.Rest
        where part.Type.Circuit.OfType<Contact>().Any(contact =>
            contact.Control == control.Name && contact.ClosedAt.Contains(position) != contact.ClosedAt.Contains(control.Rest))
        select new OperatedControl(part.Designation, control.Name, position);
}
