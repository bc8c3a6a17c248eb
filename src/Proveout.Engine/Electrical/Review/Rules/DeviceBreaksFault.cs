using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A protective device interrupts the largest fault current where it sits.</summary>
internal sealed class DeviceBreaksFault : IReviewRule
{
    public string Id => "device-breaks-fault";

    public string Words => "breaking capacity of fuses and breakers against the fault current of the mains";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var devices = context.Design.Parts.Where(part => IsInMains(context, part)).ToArray();
        if (devices.Length == 0)
            return [];
        if (context.Settings.ShortCircuit?.Amperes is not { } fault)
            return NotKnown.Of(this, [context.Design.Name], "the fault current at the inlet", "review: {short-circuit: 1 kA}");
        return devices
            .Where(part => part.Type.Ratings.Breaking?.Amperes < fault)
            .Select(part => Found(part, fault))
            .Concat(NotKnown.Of(this, devices.Where(part => part.Type.Ratings.Breaking is null).Select(part => part.Designation), "the breaking capacity", "ratings: {breaking: 1.5 kA}"));
    }

    private static bool IsInMains(ReviewContext context, Part part) =>
        part.Type.Circuit.OfType<Fuse>().Any(fuse => fuse.Curve != FuseCurve.Thermal
            && context.FindNode(part.Designation, fuse.A) is { } node
            && context.SuppliesAt(node).Any(reach => reach.Supply.IsMains));

    private Finding Found(Part part, double fault) => new(
        Id,
        FindingSeverity.Error,
        [part.Designation],
        $"{part.Designation} ({part.Name}) interrupts {ReviewContext.Number(part.Type.Ratings.Breaking!.Value.Amperes)} A; a fault in the mains drives {ReviewContext.Number(fault)} A.",
        "Take a device of high breaking capacity (ceramic tube with sand, circuit-breaker of 6 kA).",
        "IEC 60364-4-43 clause 434.5.1")
    {
        Numbers = [new("breaking capacity", part.Type.Ratings.Breaking!.Value.Amperes, "A"), new("fault current", fault, "A")],
    };
}
