namespace Proveout.Engine.Machine;

/// <summary>Checks that what is left for later can be left.</summary>
internal sealed class LaterChecks(Section<PartEntry> parts, MotionDesign motion, Problems problems)
{
    private readonly Dictionary<string, string> _later = new(StringComparer.Ordinal);

    public void Check(LaterFitting fitting, Node node)
    {
        if (fitting.Parts.Count == 0 && fitting.Affects.Count == 0)
            problems.Add("nothing-later", node.NamePlace, $"{Quote.Of(fitting.Name)} neither has parts nor affects anything.", "Give `parts`, `affects`, or leave it out.");
        for (var at = 0; at < fitting.Parts.Count; at++)
            CheckPart(fitting, fitting.Parts[at], node.Under("parts").Item(at));
    }

    /// <summary>Adds a problem for each part that stays and is mounted on one that comes later than it.</summary>
    public void CheckMounting()
    {
        foreach (var (part, node) in parts.Entries)
            if (part.Placement?.On is { Length: > 0 } carrier
                && _later.TryGetValue(carrier, out var fitting)
                && _later.GetValueOrDefault(part.Designation) != fitting)
                problems.Add(
                    "mounted-on-later",
                    node.Under("mounted").Place,
                    $"{Quote.Of(part.Designation)} is mounted on {Quote.Of(carrier)}, which comes later with {Quote.Of(fitting)}.",
                    $"Name it among the parts of {Quote.Of(fitting)}, or mount it on something else.");
    }

    private void CheckPart(LaterFitting fitting, string part, Node node)
    {
        if (!parts.Contains(part))
            problems.AddUnknown("unknown-part", node.Place, part, "a part of this machine", parts.Names);
        else if (!_later.TryAdd(part, fitting.Name))
            problems.Add("later-twice", node.Place, $"{Quote.Of(part)} already comes with {Quote.Of(_later[part])}.", "Name it once.");
        else if (Drives(part))
            problems.Add("later-motor", node.Place, $"{Quote.Of(part)} moves an axis, so the machine cannot run without it.", "Leave it out here.");
    }

    private bool Drives(string part) =>
        motion.Pulleys.Any(pulley => pulley.Driven?.Motor == part) || motion.Screws.Any(screw => screw.Driven.Motor == part);
}
