namespace Proveout.Engine.Machine;

/// <summary>Checks that the path of a belt can be.</summary>
internal sealed class BeltChecks(Section<Pulley> pulleys, Section<BeltAnchor> anchors, Problems problems)
{
    // Pitches that differ by less are one pitch written with fewer digits; 2 mm and 2.032 mm differ by more.
    private const double SamePitchMm = 0.001;

    public void Check(Belt belt, Node node)
    {
        var path = node.Under("path");
        if (node.Find("path") is not ListNode)
            return;
        if (belt.Path.Count < 2)
            problems.Add("short-path", path.Place, $"The belt {Quote.Of(belt.Name)} has fewer than two points.", "List every pulley and anchor that it touches, in order.");
        for (var at = 0; at < belt.Path.Count; at++)
            CheckPoint(belt, at, path.Item(at));
        CheckPlanes(belt, path);
        // A loop of two points has one gap, met twice.
        for (var at = belt.Closed && belt.Path.Count > 2 ? 0 : 1; at < belt.Path.Count; at++)
            CheckGap(belt, at, path.Item(at));
        if (belt.Closed && belt.Path.Count(point => point.HalfTurn) % 2 == 1)
            problems.Add("odd-twist", path.Place, $"The loop {Quote.Of(belt.Name)} comes back turned over.", "Give it an even number of half turns.");
        if (belt.Closed && node.Find("tail") is { } tail)
            problems.Add("unknown-key", tail.NamePlace, $"The loop {Quote.Of(belt.Name)} has no ends.", "Leave `tail` out.");
    }

    private void CheckPoint(Belt belt, int at, Node node)
    {
        var point = belt.Path[at];
        if (point.At.Length == 0)
            return;
        var isEnd = !belt.Closed && (at == 0 || at == belt.Path.Count - 1);
        if (!pulleys.Contains(point.At) && !anchors.Contains(point.At))
            problems.AddUnknown("unknown-point", node.Under("at").Place, point.At, "a pulley or anchor of this machine", [.. pulleys.Names, .. anchors.Names]);
        else if (isEnd != anchors.Contains(point.At))
            problems.Add(
                "wrong-end",
                node.Under("at").Place,
                isEnd ? $"An end of {Quote.Of(belt.Name)} is at {Quote.Of(point.At)}, which is a pulley." : $"{Quote.Of(point.At)} is an anchor amid the path of {Quote.Of(belt.Name)}.",
                isEnd ? "Begin and end an open belt at anchors, or say `closed: true`." : "Split the belt there into two.");
        else if (isEnd != (point.Turn is BeltTurn.None))
            problems.Add(
                "wrong-turn",
                node.NamePlace,
                isEnd ? $"A belt cannot bend round its anchor {Quote.Of(point.At)}." : $"Nothing says which way {Quote.Of(belt.Name)} bends at {Quote.Of(point.At)}.",
                isEnd ? "Leave `turn` out." : "Add `turn: left` or `turn: right`, as one goes along the list.");
        if (pulleys.Find(point.At) is { HasTeeth: true, Pitch: { } pitch } && Math.Abs(pitch.Millimeters - belt.Pitch.Millimeters) > SamePitchMm && belt.Pitch.Millimeters > 0)
            problems.Add(
                "pitches-differ",
                node.Under("at").Place,
                FormattableString.Invariant($"{Quote.Of(point.At)} has teeth of {pitch.Millimeters:0.###} mm, the belt {Quote.Of(belt.Name)} of {belt.Pitch.Millimeters:0.###} mm."),
                "Belt and pulley need one pitch and one profile: 2.032 mm and 2 mm look alike.");
    }

    private void CheckPlanes(Belt belt, Node path)
    {
        string[] planes = [.. belt.Path.Select(point => PlaneOf(point.At)).OfType<string>().Distinct()];
        if (planes.Length > 1)
            problems.Add("planes-differ", path.Place, $"The belt {Quote.Of(belt.Name)} runs in {string.Join(" and ", planes.Select(Quote.Of))}.", "Give all its points one plane.");
    }

    // Only points that ride alike keep their distance; others are looked at over the travel by the belt check.
    private void CheckGap(Belt belt, int at, Node node)
    {
        var (point, before) = (belt.Path[at], belt.Path[(at + belt.Path.Count - 1) % belt.Path.Count]);
        if (Find(before.At) is not { } one || Find(point.At) is not { } two || !one.Across.Shares.Equals(two.Across.Shares) || !one.Up.Shares.Equals(two.Up.Shares))
            return;
        var apart = Math.Sqrt(Square(one.Across, two.Across) + Square(one.Up, two.Up));
        // Bent the same way two round ends need the difference of their radii between centres, bent opposite ways the sum.
        var needed = before.Turn == point.Turn ? Math.Abs(one.RadiusMm - two.RadiusMm) : one.RadiusMm + two.RadiusMm;
        if (apart <= needed)
            problems.Add(
                "no-room",
                node.Under("at").Place,
                FormattableString.Invariant($"{Quote.Of(before.At)} and {Quote.Of(point.At)} are {apart:0.##} mm apart; {Quote.Of(belt.Name)} needs more than {needed:0.##} mm there."),
                "Look at their places, their sizes, and which way the belt bends.");
    }

    private static double Square(Riding one, Riding two) => Math.Pow(one.Fixed.Millimeters - two.Fixed.Millimeters, 2);

    private string? PlaneOf(string name) => pulleys.Find(name)?.Plane ?? anchors.Find(name)?.Plane;

    private (Riding Across, Riding Up, double RadiusMm)? Find(string name) =>
        pulleys.Find(name) is { } pulley
            ? (pulley.Across, pulley.Up, pulley.HasTeeth ? pulley.Teeth * (pulley.Pitch?.Millimeters ?? 0) / (2 * Math.PI) : (pulley.Diameter?.Millimeters ?? 0) / 2)
            : anchors.Find(name) is { } anchor ? (anchor.Across, anchor.Up, 0) : null;
}
