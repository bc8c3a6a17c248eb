using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The states in which a live machine is looked at.</summary>
internal static class ControlStates
{
    /// <summary>All off, each switch off alone, idle, started, each output alone, all outputs, each stop pressed and released.</summary>
    public static IReadOnlyList<ControlState> Of(MachineDesign design)
    {
        var off = SwitchedOff(design).ToValueList();
        var commands = CommandsOf(design).ToValueList();
        var starts = Buttons(design, opening: false).ToList();
        var states = new List<ControlState>();
        if (off.Count > 0)
            states.Add(new("switched off", ControlStateKind.Off, off, [], null));
        // A single-pole device that stands in the neutral by mistake shows only when it alone is off.
        if (off.Count > 1)
            states.AddRange(off.Select(one => new ControlState($"{one.Part} {one.Position}", ControlStateKind.Off, [one], [], null)));
        var idle = new ControlState("on, nothing commanded", ControlStateKind.Idle, [], [], null);
        states.Add(idle);
        var before = idle;
        foreach (var start in starts)
        {
            states.Add(new($"{start.Part} held {start.Position}", ControlStateKind.Starting, [start], [], before));
            before = new($"after {start.Part} was {start.Position}", ControlStateKind.Running, [], [], states[^1]);
            states.Add(before);
        }

        var running = starts.Count > 0 ? before : null;
        states.AddRange(Sensors(design).Select(sensor =>
            new ControlState($"{sensor.Part} {sensor.Position}", ControlStateKind.Sensing, [sensor], [], running)));
        if (commands.Count > 1)
            states.AddRange(commands.Select(command =>
                new ControlState($"{command.Part} {command.Command} on", ControlStateKind.OneOutput, [], [command], running)));
        var all = new ControlState("all outputs on", ControlStateKind.AllOutputs, [], commands, running);
        if (commands.Count > 0)
            states.Add(all);
        foreach (var stop in Buttons(design, opening: true))
        {
            var stopped = new ControlState($"{stop.Part} {stop.Position}", ControlStateKind.Stopped, [stop], commands, running is null ? null : all);
            states.Add(stopped);
            if (running is not null)
                states.Add(new($"{stop.Part} released again", ControlStateKind.Released, [], commands, stopped));
        }

        return states;
    }

    private static IEnumerable<(string Part, string Control, string Position)> SwitchedOff(MachineDesign design) =>
        from part in design.Parts
        from control in part.Type.Controls
        where control.Positions.Contains("off", StringComparer.Ordinal)
        select (part.Designation, control.Name, "off");

    // A button is a control of a switch for the hand (class letter S) that no coil moves and that has no off position.
    private static IEnumerable<(string Part, string Control, string Position)> Buttons(MachineDesign design, bool opening) =>
        from part in design.Parts
        where part.Type.ClassLetter == "S"
        from control in part.Type.Controls
        where !control.Positions.Contains("off", StringComparer.Ordinal)
        from position in control.Positions
        where position != control.Rest
        where part.Type.Circuit.OfType<Contact>().Any(contact =>
            contact.Control == control.Name
            && contact.ClosedAt.Contains(control.Rest, StringComparer.Ordinal) == opening
            && contact.ClosedAt.Contains(position, StringComparer.Ordinal) != opening)
        select (part.Designation, control.Name, position);

    private static IEnumerable<(string Part, string Control, string Position)> Sensors(MachineDesign design) =>
        from part in design.Parts
        where part.Type.ClassLetter == "B"
        from control in part.Type.Controls
        from position in control.Positions
        where position != control.Rest
        select (part.Designation, control.Name, position);

    // Only outputs that something is wired to.
    private static IEnumerable<(string Part, string Command)> CommandsOf(MachineDesign design)
    {
        var wired = design.Conductors.SelectMany(conductor => new[] { conductor.From, conductor.To }).ToHashSet();
        return from part in design.Parts
               from command in part.Type.Circuit.Select(element => (Name: CommandOf(element), Element: element))
                   .Where(item => item.Name.Length > 0)
                   .GroupBy(item => item.Name)
               where command.Any(item => IsWired(wired, part, item.Element))
               select (part.Designation, command.Key);
    }

    private static string CommandOf(CircuitElement element) => element switch
    {
        SwitchedPath path => path.Command,
        HeldCurrent held => held.Command,
        _ => "",
    };

    private static bool IsWired(HashSet<TerminalReference> wired, Part part, CircuitElement element) =>
        wired.Contains(new(part.Designation, element.A)) || wired.Contains(new(part.Designation, element.B));
}
