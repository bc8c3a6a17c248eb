namespace Proveout.Engine.Machine;

/// <summary>Checks that what a machine says of its bays can be.</summary>
internal sealed class BayChecks(Section<PartEntry> parts, Section<Surface> surfaces, Problems problems)
{
    public void Check(Bay bay, Node node)
    {
        if (bay.Inside.Depth is null && node.Find("inside") is { } inside)
            problems.Add("missing-depth", inside.Place, $"The bay {Quote.Of(bay.Name)} has no depth.", "Write three lengths, such as `480 x 340 x 100 mm`.");
        if (bay.Surface.Length > 0 && !surfaces.Contains(bay.Surface))
            problems.AddUnknown("unknown-surface", node.Under("surface").Place, bay.Surface, "a surface of this machine", surfaces.Names);
        for (var at = 0; at < bay.Parts.Count; at++)
            CheckPart(bay.Parts[at], node.Under("parts").Item(at).Place);
        foreach (var content in bay.Contents)
            CheckContent(content, node.Under("contents").Under(content.Part));
        foreach (var opening in bay.Openings)
            CheckOpening(opening, node.Under("openings").Under(opening.Name));
    }

    private void CheckContent(BayContent content, Node node)
    {
        CheckPart(content.Part, node.NamePlace);
        if (content.LeastHeat is { } least && content.MostHeat is { } most && least > most)
            problems.Add("out-of-order", node.Under("most-heat").Place, $"The most heat of {Quote.Of(content.Part)} is below its least.", "Give the lower figure as `least-heat`.");
        if (content.LeastHeat is not null && content.MostHeat is null)
            problems.Add("missing-key", node.NamePlace, $"{Quote.Of(content.Part)} has `least-heat`, but no `most-heat`.", "Add `most-heat`.");
    }

    private void CheckOpening(BayOpening opening, Node node)
    {
        if (opening.Open is { Percent: > 100 })
            problems.Add("out-of-range", node.Under("open").Place, $"More than all of {Quote.Of(opening.Name)} cannot be free.", "Write a share up to `100 %`.");
        if (opening.Filter is { } filter && filter.Loaded < filter.Clean)
            problems.Add("out-of-order", node.Under("filter").Under("loaded").Place, "A loaded filter takes no less pressure than a clean one.", "Give the higher pressure as `loaded`.");
        if (opening.Fan is { } fan)
            CheckFan(fan, node.Under("fan"));
    }

    private void CheckFan(BayFan fan, Node node)
    {
        CheckPart(fan.Part, node.Under("part").Place);
        if (fan.Scatter is { Percent: >= 50 })
            problems.Add("out-of-range", node.Under("scatter").Place, "A fan whose speed differs by half is not known.", "Write its tolerance, such as `10 %`.");
        var (flow, pressure) = (0.0, fan.MostPressure.Pascals);
        for (var at = 0; at < fan.Points.Count; at++)
        {
            var place = node.Under("points").Item(at).Place;
            var point = fan.Points[at];
            if (point.Flow.CubicMetersPerSecond <= flow || point.Flow >= fan.MostFlow)
                problems.Add("out-of-order", place, "The flows of a fan's curve rise from point to point, and stay below its most flow.", "Put the points in the order of their flow.");
            else if (point.Pressure.Pascals > pressure)
                problems.Add(
                    "rising-curve", place, "The pressure of this fan rises with its flow here; where it settles would not be certain.", "Where a curve dips, give the pressure of the dip for all flows below it: that is the safe side.");
            (flow, pressure) = (point.Flow.CubicMetersPerSecond, point.Pressure.Pascals);
        }
    }

    private void CheckPart(string designation, SourcePlace place)
    {
        if (designation.Length > 0 && !parts.Contains(designation))
            problems.AddUnknown("unknown-part", place, designation, "a part of this machine", parts.Names);
    }
}
