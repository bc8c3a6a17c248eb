namespace Proveout.Engine.Machine;

/// <summary>Checks that what surfaces, rails, parts and routes say of places can be.</summary>
internal sealed class LayoutChecks(Section<Surface> surfaces, Section<Rail> rails, Section<PartEntry> parts, Problems problems)
{
    public void Check(Rail rail, Node node)
    {
        CheckSurface(rail.On, node.Under("on"));
        var (from, to) = (SpotMm.Of(rail.From), SpotMm.Of(rail.To));
        if (surfaces.Contains(rail.Name))
            problems.Add("duplicate-name", node.NamePlace, $"{Quote.Of(rail.Name)} is the name of a surface already.", "Give each its own name.");
        if (!((from.Up == to.Up && from.Across < to.Across) || (from.Across == to.Across && from.Up < to.Up)))
            problems.Add(
                "slanting-rail",
                node.Under("to").Place,
                $"The rail {Quote.Of(rail.Name)} runs neither level to the right nor straight up.",
                "Give its left end first, or its lower end first.");
    }

    public void Check(PartEntry part, PartType? type, Node node)
    {
        if (part.Placement is not { On.Length: > 0 } placement)
            return;
        var place = node.Under("mounted");
        var isOnRail = rails.Contains(placement.On);
        if (!isOnRail && !surfaces.Contains(placement.On) && !parts.Contains(placement.On))
            problems.AddUnknown(
                "unknown-surface",
                place.Under("on").Place,
                placement.On,
                "a surface, rail or part of this machine",
                [.. surfaces.Names, .. rails.Names, .. parts.Names]);
        else if (CarriesItself(part))
            problems.Add(
                "carries-itself",
                place.Under("on").Place,
                $"{Quote.Of(part.Designation)} is mounted on {Quote.Of(placement.On)}, which hangs on {Quote.Of(part.Designation)} in turn.",
                "Mount one of them on a surface or rail.");
        else if (place.Find(isOnRail ? "along" : "at") is null)
            problems.Add(
                "missing-key",
                place.NamePlace,
                $"{Quote.Of(part.Designation)} is mounted on {Quote.Of(placement.On)}, but nothing says where.",
                isOnRail ? "Add `along`, its distance from the rail's first end." : "Add `at`, its lower left corner.");
        else if (place.Find(isOnRail ? "at" : "along") is { } other)
            problems.Add(
                "unknown-key",
                other.NamePlace,
                isOnRail ? "`at` is for surfaces and parts." : "`along` is for rails.",
                "Leave it out.");
        if (type is not null && part.OwnSize is null && type.Size is null)
            problems.Add(
                "missing-key",
                place.NamePlace,
                $"{Quote.Of(part.Designation)} is mounted, but neither it nor its type {Quote.Of(part.Type)} says how large it is.",
                "Add `size` to the part, such as `size: 110 x 90 mm`.");
    }

    public void Check(Route route, Node node)
    {
        if (route.On.Length > 0)
            CheckSurface(route.On, node.Under("on"));
        if (route.Path.Count > 0 && route.On.Length == 0)
            problems.Add("missing-key", node.NamePlace, $"The route {Quote.Of(route.Name)} has a path, but nothing says on which surface.", "Add `on`.");
        if (route.LiesOnSurface && route.Length is not null)
            problems.Add(
                "two-lengths",
                node.Under("length").NamePlace,
                $"The length of {Quote.Of(route.Name)} follows from its path.",
                "Leave `length` out, or keep only the first point of the path.");
    }

    public void CheckLength(ConductorWay way, Node node)
    {
        if (way.Conductor.LengthIsComputed && way.Missing is { } missing)
            problems.Add(
                "missing-length",
                node.NamePlace,
                $"The conductor {Quote.Of(way.Conductor.Id)} has no `length`, and none can be computed: {missing}.",
                "Add its length, or what is missing.");
    }

    private bool CarriesItself(PartEntry part)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var carrier = part.Placement?.On; carrier is not null && parts.Find(carrier) is { } found; carrier = found.Placement?.On)
            if (carrier == part.Designation)
                return true;
            else if (!seen.Add(carrier))
                return false;
        return false;
    }

    private void CheckSurface(string name, Node node)
    {
        if (name.Length > 0 && !surfaces.Contains(name))
            problems.AddUnknown("unknown-surface", node.Place, name, "a surface of this machine", surfaces.Names);
    }
}
