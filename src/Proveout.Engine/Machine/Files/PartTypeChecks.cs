namespace Proveout.Engine.Machine;

/// <summary>Checks that what a part type says of its own terminals, controls and nodes exists.</summary>
internal sealed class PartTypeChecks
{
    private readonly PartType _type;
    private readonly Node _node;
    private readonly TypeMembers _members;
    private readonly Problems _problems;

    private PartTypeChecks(PartType type, Node node, Problems problems) =>
        (_type, _node, _members, _problems) = (type, node, new TypeMembers(type, node), problems);

    public static void Check(PartType type, Node node, Problems problems)
    {
        var checks = new PartTypeChecks(type, node, problems);
        checks.CheckConnectors();
        checks.CheckEdges();
        checks.CheckControls();
        checks.CheckContacts();
        checks.CheckEnds();
        checks.CheckInnerNodes();
        LiveElementChecks.Check(type, node, problems);
        SourceChecks.Check(type, node, problems);
    }

    private void CheckConnectors()
    {
        var owner = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var connector in _type.Connectors)
        {
            var list = _node.Under("connectors").Under(connector.Name).Under("terminals");
            for (var at = 0; at < connector.Terminals.Count; at++)
            {
                var terminal = connector.Terminals[at];
                if (!_members.Terminals.Contains(terminal))
                    _problems.AddUnknown(
                        "unknown-terminal",
                        list.Item(at).Place,
                        terminal,
                        $"a terminal of {Quote.Of(_type.Id)}",
                        _members.Terminals);
                else if (!owner.TryAdd(terminal, connector.Name))
                    _problems.Add(
                        "duplicate-name",
                        list.Item(at).Place,
                        $"The terminal {Quote.Of(terminal)} is in the connector {Quote.Of(owner[terminal])} already.",
                        "Name it once.");
            }
        }
    }

    private void CheckEdges()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (edge, names) in new[] { ("above", _type.Sides.Above), ("below", _type.Sides.Below), ("left", _type.Sides.Left), ("right", _type.Sides.Right) })
            for (var at = 0; at < names.Count; at++)
                if (_node.Under("edges").Under(edge).Item(at).Place is var place && !_members.Terminals.Contains(names[at]))
                    _problems.AddUnknown("unknown-terminal", place, names[at], $"a terminal of {Quote.Of(_type.Id)}", _members.Terminals);
                else if (!seen.Add(names[at]))
                    _problems.Add("duplicate-name", place, $"The terminal {Quote.Of(names[at])} is at an edge already.", "Name it once.");
    }

    private void CheckControls()
    {
        foreach (var control in _type.Controls)
        {
            var node = _node.Under("controls").Under(control.Name);
            CheckRepeats(control.Positions, node.Under("positions"), "position");
            if (control.Positions.Count > 0 && control.Rest.Length > 0 && !control.Positions.Contains(control.Rest, StringComparer.Ordinal))
                _problems.AddUnknown(
                    "unknown-position",
                    node.Under("rest").Place,
                    control.Rest,
                    $"a position of {Quote.Of(control.Name)}",
                    control.Positions);
        }
    }

    private void CheckContacts()
    {
        var controls = _type.Controls.ToDictionary(control => control.Name, StringComparer.Ordinal);
        foreach (var contact in _type.Circuit.OfType<Contact>())
        {
            var node = _node.Under("circuit").Under(contact.Name);
            CheckRepeats(contact.ClosedAt, node.Under("closed-at"), "position");
            if (contact.Control.Length > 0 && !_members.Controls.Contains(contact.Control))
                _problems.AddUnknown(
                    "unknown-control",
                    node.Under("control").Place,
                    contact.Control,
                    $"a control of {Quote.Of(_type.Id)}",
                    _members.Controls);
            else if (controls.GetValueOrDefault(contact.Control) is { Positions.Count: > 0 } moved)
                CheckPositions(contact, moved, node.Under("closed-at"));
        }
    }

    private void CheckPositions(Contact contact, Control control, Node list)
    {
        for (var at = 0; at < contact.ClosedAt.Count; at++)
        {
            var position = contact.ClosedAt[at];
            if (!control.Positions.Contains(position, StringComparer.Ordinal))
                _problems.AddUnknown(
                    "unknown-position",
                    list.Item(at).Place,
                    position,
                    $"a position of {Quote.Of(control.Name)}",
                    control.Positions);
        }
    }

    private void CheckRepeats(ValueList<string> names, Node list, string kind)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var at = 0; at < names.Count; at++)
            if (!seen.Add(names[at]))
                _problems.Add("duplicate-name", list.Item(at).Place, $"The {kind} {Quote.Of(names[at])} is listed twice.", "List it once.");
    }

    private void CheckEnds()
    {
        foreach (var element in _type.Circuit.Where(element => element.A == element.B && element.A.Length > 0))
            _problems.Add(
                "loop",
                _node.Under("circuit").Under(element.Name).Under("between").Item(1).Place,
                $"The element {Quote.Of(element.Name)} begins and ends at {Quote.Of(element.A)}.",
                "Give it two different nodes.");
    }

    // A node that is no terminal and is named once only leads nowhere; that is how a misspelt node shows.
    private void CheckInnerNodes()
    {
        if (_type.Circuit.Any(element => element.A.Length == 0)
            || (_node.Find("circuit") as MappingNode)?.Entries.Count > _type.Circuit.Count)
            return;
        var uses = NodeUses().ToLookup(use => use.Node, use => use.Place, StringComparer.Ordinal);
        var sound = uses.Where(use => use.Skip(1).Any()).Select(use => use.Key).ToHashSet(StringComparer.Ordinal);
        sound.UnionWith(_members.Terminals);
        foreach (var loose in uses.Where(use => use.Key.Length > 0 && !sound.Contains(use.Key)))
            _problems.Add(
                "loose-node",
                loose.First(),
                $"{Quote.Of(loose.Key)} is not a terminal of {Quote.Of(_type.Id)}, and no other element or jumper stands at it.",
                () => Spelling.Hint(loose.Key, sound));
    }

    private IEnumerable<(string Node, SourcePlace Place)> NodeUses()
    {
        foreach (var element in _type.Circuit)
        {
            var between = _node.Under("circuit").Under(element.Name).Under("between");
            yield return (element.A, between.Item(0).Place);
            yield return (element.B, between.Item(1).Place);
        }

        foreach (var jumper in _type.Jumpers)
        {
            var node = _node.Under("jumpers").Under(jumper.Name);
            yield return (jumper.Common, node.Under("common").Place);
            foreach (var position in jumper.Positions)
                yield return (position.Post, node.Under("positions").Under(position.Name).Place);
        }
    }
}
