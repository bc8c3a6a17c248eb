using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Of two fuses in a row the nearer to the fault acts first.</summary>
internal sealed class DevicesDiscriminate : IReviewRule
{
    // Up to ten times the nearer device's rating a fault of a part is likely; a dead short drives more and may open both. Common practice.
    private const double Multiple = 10;

    public string Id => "devices-discriminate";

    public string Words => "of two fuses in a row the nearer acts first";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var seen = new HashSet<(int, int)>();
        foreach (var demand in context.Demands.All)
        {
            var devices = demand.Reach.WayTo(demand.Fed).Select(step => step.Element)
                .Where(element => element.Part is Fuse { Rating: not null, Curve: not (null or FuseCurve.Thermal) })
                .ToArray();
            foreach (var (near, far) in devices.Zip(devices.Skip(1)))
                if (seen.Add((near.Index, far.Index)) && Found(near, far) is { } finding)
                    yield return finding;
        }
    }

    private Finding? Found(NetworkElement near, NetworkElement far)
    {
        var (nearFuse, farFuse) = ((Fuse)near.Part!, (Fuse)far.Part!);
        var (nearAmperes, farAmperes) = (nearFuse.Rating!.Value.Amperes, farFuse.Rating!.Value.Amperes);
        var upTo = Discrimination.UpTo(farFuse.Curve!.Value, farAmperes, nearFuse.Curve!.Value, nearAmperes);
        if (upTo >= Multiple * nearAmperes)
            return null;
        var until = upTo <= nearAmperes * 1.5 ? "at no fault current" : $"only up to {ReviewContext.Number(upTo)} A";
        return new(
            Id,
            FindingSeverity.Note,
            [near.Subject, far.Subject],
            $"{PathWords.Plain(near)} ({ReviewContext.Number(nearAmperes)} A) lies behind {PathWords.Plain(far)} ({ReviewContext.Number(farAmperes)} A) and surely acts first {until}: a fault in one branch may take the others with it.",
            "Take the farther one at least 1.6 times the nearer, or slower, where conductors allow it.",
            "characteristics of IEC 60127-2, IEC 60898-1, ISO 8820-3; common practice")
        {
            Numbers = [new("acts first up to", upTo, "A"), new("nearer", nearAmperes, "A"), new("farther", farAmperes, "A")],
        };
    }
}
