namespace Proveout.Engine.Machine;

/// <summary>Checks that what live elements of a part type refer to exists.</summary>
internal static class LiveElementChecks
{
    public static void Check(PartType type, Node node, Problems problems)
    {
        var nodes = type.Terminals.Select(terminal => terminal.Name)
            .Concat(type.Circuit.SelectMany(element => new[] { element.A, element.B }))
            .Concat(type.Jumpers.SelectMany(jumper => jumper.Positions.Select(position => position.Post).Append(jumper.Common)))
            .ToHashSet(StringComparer.Ordinal);
        foreach (var element in type.Circuit)
            Check(type, element, node.Under("circuit").Under(element.Name), nodes, problems);
    }

    private static void Check(PartType type, CircuitElement element, Node node, HashSet<string> nodes, Problems problems)
    {
        switch (element)
        {
            case SwitchedPath path:
                CheckPath(path, node, problems);
                CheckNodes(type, path.Port, node.Under("driven-by"), nodes, problems);
                break;
            case HeldCurrent held:
                CheckNodes(type, held.Feed, node.Under("fed-by"), nodes, problems);
                break;
            case Source { Feed: { } feed }:
                CheckNodes(type, [feed.A, feed.B], node.Under("fed-by"), nodes, problems);
                break;
            case Drive drive:
                CheckDrive(type, drive, node, problems);
                break;
            case ResidualTrip trip:
                CheckTrip(type, trip, node.Under("opens"), problems);
                break;
        }
    }

    private static void CheckPath(SwitchedPath path, Node node, Problems problems)
    {
        if ((path.Command.Length > 0) == (path.Port.Count > 0))
            problems.Add(
                "switch-cause",
                node.NamePlace,
                $"The switch {Quote.Of(path.Name)} should be closed either by a command or by a port.",
                "Give it `command`, or `driven-by` with `at-least`.");
        else if (path.Port.Count > 0 && path.AtLeast is null)
            problems.Add("missing-key", node.NamePlace, $"The switch {Quote.Of(path.Name)} has no `at-least`.", "Give the voltage that closes it.");
    }

    private static void CheckNodes(PartType type, ValueList<string> names, Node list, HashSet<string> nodes, Problems problems)
    {
        for (var at = 0; at < names.Count; at++)
            if (names[at].Length > 0 && !nodes.Contains(names[at]))
                problems.AddUnknown("unknown-node", list.Item(at).Place, names[at], $"a node of {Quote.Of(type.Id)}", nodes);
    }

    private static void CheckDrive(PartType type, Drive drive, Node node, Problems problems)
    {
        var controls = type.Controls.ToDictionary(control => control.Name, control => control.Positions, StringComparer.Ordinal);
        if (drive.Control.Length > 0 && !controls.ContainsKey(drive.Control))
            problems.AddUnknown("unknown-control", node.Under("control").Place, drive.Control, $"a control of {Quote.Of(type.Id)}", controls.Keys);
        else if (controls.TryGetValue(drive.Control, out var positions) && drive.Position.Length > 0 && !positions.Contains(drive.Position, StringComparer.Ordinal))
            problems.AddUnknown("unknown-position", node.Under("to").Place, drive.Position, $"a position of {Quote.Of(drive.Control)}", positions);
    }

    private static void CheckTrip(PartType type, ResidualTrip trip, Node list, Problems problems)
    {
        var contacts = type.Circuit.OfType<Contact>().Select(contact => contact.Name).ToHashSet(StringComparer.Ordinal);
        for (var at = 0; at < trip.Opens.Count; at++)
            if (!contacts.Contains(trip.Opens[at]))
                problems.AddUnknown("unknown-contact", list.Item(at).Place, trip.Opens[at], $"a contact of {Quote.Of(type.Id)}", contacts);
    }
}
