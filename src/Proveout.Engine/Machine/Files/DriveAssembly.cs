namespace Proveout.Engine.Machine;

/// <summary>Joins what the files of a machine say of axes, pulleys, anchors, belts and screws, and checks it.</summary>
internal sealed class DriveAssembly
{
    private readonly Section<Axis> _axes;
    private readonly Section<Pulley> _pulleys;
    private readonly Section<BeltAnchor> _anchors;
    private readonly Section<Belt> _belts;
    private readonly Section<Screw> _screws;
    private readonly Section<PartEntry> _parts;
    private readonly Problems _problems;
    private readonly HashSet<string> _motors = new(StringComparer.Ordinal);

    public DriveAssembly(List<(Node Root, MachineDocument Document)> documents, Section<PartEntry> parts, Problems problems)
    {
        (_parts, _problems) = (parts, problems);
        _axes = Join(DriveShapes.AxesKey, motion => motion.Axes, DriveShapes.Axes);
        _pulleys = Join(DriveShapes.PulleysKey, motion => motion.Pulleys, DriveShapes.Pulleys);
        _anchors = Join(DriveShapes.AnchorsKey, motion => motion.Anchors, DriveShapes.Anchors);
        _belts = Join(DriveShapes.BeltsKey, motion => motion.Belts, DriveShapes.Belts);
        _screws = Join(DriveShapes.ScrewsKey, motion => motion.Screws, DriveShapes.Screws);

        Section<T> Join<T>(string key, Func<MotionDesign, ValueList<T>> get, NamedShape<T> shape) =>
            new(documents.Select(file => (file.Root.Find(key), get(file.Document.Motion))), shape, problems);
    }

    /// <summary>What all files say together.</summary>
    public MotionDesign Motion => new(All(_axes), All(_pulleys), All(_anchors), All(_belts), All(_screws));

    /// <summary>Adds a problem for everything that cannot be.</summary>
    public void Check()
    {
        foreach (var (axis, node) in _axes.Entries)
            CheckAxis(axis, node);
        foreach (var (pulley, node) in _pulleys.Entries)
            CheckPulley(pulley, node);
        foreach (var (anchor, node) in _anchors.Entries)
            CheckPlace(anchor.Across, anchor.Up, node);
        var belts = new BeltChecks(_pulleys, _anchors, _problems);
        foreach (var (belt, node) in _belts.Entries)
            belts.Check(belt, node);
        foreach (var (screw, node) in _screws.Entries)
        {
            CheckMotor(screw.Driven, node.Under("driven"));
            CheckAxisName(screw.Moves, node.Under("moves").Place);
        }
    }

    private static ValueList<T> All<T>(Section<T> section) => section.Entries.Select(entry => entry.Item).ToValueList();

    private void CheckAxis(Axis axis, Node node)
    {
        if (axis.High <= axis.Low)
            _problems.Add("no-travel", node.Under("to").Place, $"The axis {Quote.Of(axis.Name)} ends where it begins, or before.", "Give the lower coordinate as `from`, the higher as `to`.");
        if (Riding.Units.Contains(axis.Name) || Riding.TryParse(axis.Name) is not { Shares: [{ Factor: 1 }] })
            _problems.Add("bad-name", node.NamePlace, $"{Quote.Of(axis.Name)} cannot be the name of an axis: places could not refer to it.", "Use a letter, then letters and digits, such as `x`; no unit.");
    }

    private void CheckPulley(Pulley pulley, Node node)
    {
        CheckPlace(pulley.Across, pulley.Up, node);
        string[] needed = pulley.HasTeeth ? ["teeth", "pitch"] : ["diameter"];
        string[] strange = pulley.HasTeeth ? ["diameter"] : ["teeth", "pitch", "driven", "shaft"];
        foreach (var key in needed.Where(key => node.Find(key) is null))
            _problems.Add("missing-key", node.NamePlace, $"The pulley {Quote.Of(pulley.Name)} has no {Quote.Of(key)}.", $"Add {Quote.Of(key)}.");
        foreach (var key in strange.Where(key => node.Find(key) is not null))
            _problems.Add("unknown-key", node.Under(key).NamePlace, $"{Quote.Of(key)} is not for a pulley of the kind of {Quote.Of(pulley.Name)}.", "Leave it out, or give the other kind.");
        if (pulley.Driven is { } driven)
            CheckMotor(driven, node.Under("driven"));
        if (_anchors.Contains(pulley.Name))
            _problems.Add("duplicate-name", node.NamePlace, $"{Quote.Of(pulley.Name)} is the name of an anchor too.", "Give each its own name.");
    }

    private void CheckPlace(Riding across, Riding up, Node node)
    {
        foreach (var share in across.Shares.Concat(up.Shares))
            CheckAxisName(share.Axis, node.Under("at").Place);
    }

    private void CheckAxisName(string axis, SourcePlace place)
    {
        if (axis.Length > 0 && !_axes.Contains(axis))
            _problems.AddUnknown("unknown-axis", place, axis, "an axis of this machine", _axes.Names);
    }

    private void CheckMotor(Turning turning, Node node)
    {
        if (turning.Motor.Length > 0 && !_parts.Contains(turning.Motor))
            _problems.AddUnknown("unknown-part", node.Under("motor").Place, turning.Motor, "a part of this machine", _parts.Names);
        else if (turning.Motor.Length > 0 && !_motors.Add(turning.Motor))
            _problems.Add("motor-twice", node.Under("motor").Place, $"The motor {Quote.Of(turning.Motor)} turns another pulley or screw already.", "Give both pulleys one `shaft`, and `driven` to one of them.");
    }
}
