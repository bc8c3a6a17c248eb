namespace Proveout.Engine.Machine;

/// <summary>Joins what the files of a machine say: finds the type of each part, and checks every reference.</summary>
internal sealed class MachineAssembly
{
    private readonly Problems _problems;
    private readonly Section<PartType> _types;
    private readonly Section<PartEntry> _parts;
    private readonly Section<Surface> _surfaces;
    private readonly Section<Rail> _rails;
    private readonly Section<Route> _routes;
    private readonly Section<Conductor> _conductors;
    private readonly Section<HeatedBody> _heated;
    private readonly Section<LaterFitting> _later;
    private readonly Section<Bay> _bays;
    private readonly ValueList<MistakeSetting> _mistakes;
    private readonly ReviewSettings _review;
    private readonly LayoutChecks _layout;
    private readonly DriveAssembly _drives;
    private readonly Dictionary<string, TypeMembers> _members = new(StringComparer.Ordinal);
    private readonly Dictionary<string, TypeMembers> _typeOfPart = new(StringComparer.Ordinal);

    public MachineAssembly(List<(Node Root, MachineDocument Document)> documents, Catalogue catalogue, Problems problems)
    {
        _problems = problems;
        _types = Join(MachineDocument.TypesKey, document => document.Types, PartTypeShapes.Types);
        _parts = Join(MachineDocument.PartsKey, document => document.Parts, MachineShapes.Parts);
        _surfaces = Join(MachineDocument.SurfacesKey, document => document.Surfaces, LayoutShapes.Surfaces);
        _rails = Join(MachineDocument.RailsKey, document => document.Rails, LayoutShapes.Rails);
        _layout = new(_surfaces, _rails, _parts, problems);
        _drives = new(documents, _parts, problems);
        _routes = Join(MachineDocument.RoutesKey, document => document.Routes, MachineShapes.Routes);
        _conductors = Join(MachineDocument.ConductorsKey, document => document.Conductors, MachineShapes.Conductors);
        _heated = Join(MachineDocument.HeatedKey, document => document.Heated, HeatShapes.Bodies);
        _later = Join(MachineDocument.LaterKey, document => document.Later, LaterShapes.Fittings);
        _bays = Join(MachineDocument.BaysKey, document => document.Bays, BayShapes.Bays);
        _mistakes = documents.Select(file => file.Document.Mistakes).FirstOrDefault(settings => settings.Count > 0) ?? [];
        _review = documents.Select(file => file.Document.Review).FirstOrDefault(review => review != ReviewSettings.Default) ?? ReviewSettings.Default;
        foreach (var type in catalogue.Types)
            _members[type.Id] = new(type);
        // A type of the machine's own goes before one of the catalogue: a catalogue that grows never changes a machine.
        foreach (var (type, node) in _types.Entries)
            _members[type.Id] = new(type, node);

        Section<T> Join<T>(string key, Func<MachineDocument, ValueList<T>> get, NamedShape<T> shape) =>
            new(documents.Select(file => (file.Root.Find(key), get(file.Document))), shape, problems);
    }

    /// <summary>Adds a problem for everything that refers to what does not exist.</summary>
    public void Check()
    {
        foreach (var (type, node) in _types.Entries)
            PartTypeChecks.Check(type, node, _problems);
        foreach (var (rail, node) in _rails.Entries)
            _layout.Check(rail, node);
        foreach (var (route, node) in _routes.Entries)
            _layout.Check(route, node);
        foreach (var (part, node) in _parts.Entries)
        {
            CheckPart(part, node);
            _layout.Check(part, _members.GetValueOrDefault(part.Type)?.Type, node);
        }

        var heat = new HeatChecks(_parts, _problems);
        foreach (var (body, node) in _heated.Entries)
            heat.Check(body, node);
        var air = new BayChecks(_parts, _surfaces, _problems);
        foreach (var (bay, node) in _bays.Entries)
            air.Check(bay, node);
        foreach (var (conductor, node) in _conductors.Entries)
            CheckConductor(conductor, node);
        _drives.Check();
        var later = new LaterChecks(_parts, _drives.Motion, _problems);
        foreach (var (fitting, node) in _later.Entries)
            later.Check(fitting, node);
        later.CheckMounting();
    }

    /// <summary>The machine, with a problem for each conductor whose length is not known; only when there is no problem before.</summary>
    public MachineDesign ToDesign(MachineHead head)
    {
        var design = MachineLayout.WithLengths(new(
            head.Name,
            head.Summary,
            head.Mains,
            _parts.Entries.Select(part => part.Item.ToPart(_members[part.Item.Type].Type)).ToValueList(),
            _conductors.Entries.Select(conductor => conductor.Item).ToValueList(),
            _routes.Entries.Select(route => route.Item).ToValueList())
        {
            Surfaces = _surfaces.Entries.Select(surface => surface.Item).ToValueList(),
            Rails = _rails.Entries.Select(rail => rail.Item).ToValueList(),
            Motion = _drives.Motion,
            Heated = _heated.Entries.Select(body => body.Item).ToValueList(),
            Later = _later.Entries.Select(fitting => fitting.Item).ToValueList(),
            Bays = _bays.Entries.Select(bay => bay.Item).ToValueList(),
            Mistakes = _mistakes,
            Review = _review,
        });
        if (design.Conductors.Any(conductor => conductor.Length <= UnitsNet.Length.Zero))
            foreach (var (way, (_, node)) in MachineLayout.Of(design).Ways.Zip(_conductors.Entries))
                _layout.CheckLength(way, node);
        return design;
    }

    private void CheckPart(PartEntry part, Node node)
    {
        if (_members.TryGetValue(part.Type, out var members))
        {
            _typeOfPart[part.Designation] = members;
            CheckJumpers(part, members, node.Under("jumpers"));
            foreach (var value in part.Values.Where(value => !members.Elements.Contains(value.Element)))
                _problems.AddUnknown(
                    "unknown-element",
                    node.Under("values").Under(value.Element).NamePlace,
                    value.Element,
                    $"an element with a resistance of {Quote.Of(part.Type)}",
                    members.Elements);
        }
        else if (part.Type.Length > 0 && !_types.Contains(part.Type))
        {
            _problems.AddUnknown(
                "unknown-type",
                node.Under("type").Place,
                part.Type,
                "a part type of the catalogue or of this machine",
                _members.Keys);
        }
    }

    private void CheckJumpers(PartEntry part, TypeMembers members, Node node)
    {
        foreach (var setting in part.Jumpers)
        {
            if (!members.Jumpers.Contains(setting.Jumper))
                _problems.AddUnknown(
                    "unknown-jumper",
                    node.Under(setting.Jumper).NamePlace,
                    setting.Jumper,
                    $"a jumper of {Quote.Of(part.Type)}",
                    members.Jumpers);
            else if (members.Type.Jumpers.FirstOrDefault(jumper => jumper.Name == setting.Jumper) is { Positions: var positions }
                && positions.All(position => position.Name != setting.Position))
                _problems.AddUnknown(
                    "unknown-position",
                    node.Under(setting.Jumper).Place,
                    setting.Position,
                    $"a position of the jumper {Quote.Of(setting.Jumper)}",
                    [.. positions.Select(position => position.Name)]);
        }
    }

    private void CheckConductor(Conductor conductor, Node node)
    {
        CheckTerminal(conductor.From, node.Under("from"));
        CheckTerminal(conductor.To, node.Under("to"));
        if (conductor.From.Part is not null && conductor.From == conductor.To)
            _problems.Add(
                "loop",
                node.Under("to").Place,
                $"Both ends of {Quote.Of(conductor.Id)} land on {Quote.Of(conductor.To.ToString())}.",
                "Give the other terminal.");
        for (var at = 0; at < conductor.Route.Count; at++)
            if (!_routes.Contains(conductor.Route[at]))
                _problems.AddUnknown(
                    "unknown-route",
                    node.Under("route").Item(at).Place,
                    conductor.Route[at],
                    "a route of this machine",
                    _routes.Names);
    }

    private void CheckTerminal(TerminalReference reference, Node node)
    {
        // A reference that could not be read, and a part whose type is unknown, are reported already.
        if (reference.Part is null)
            return;
        if (!_parts.Contains(reference.Part))
            _problems.AddUnknown("unknown-part", node.Place, reference.Part, "a part of this machine", _parts.Names);
        else if (_typeOfPart.TryGetValue(reference.Part, out var members) && !members.Terminals.Contains(reference.Terminal))
            _problems.AddUnknown(
                "unknown-terminal",
                node.Place,
                reference.Terminal,
                $"a terminal of {Quote.Of(reference.Part)}",
                members.Terminals);
    }
}
