using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What drives a relay's coil or control input suffices to close it.</summary>
internal sealed class RelayControlVoltage : IReviewRule
{
    public string Id => "relay-control-voltage";

    public string Words => "control voltage of relays, contactors and electronic switches against what closes them";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from part in context.Design.Parts
        from port in Ports(part)
        let a = context.FindNode(part.Designation, port.A)
        let b = context.FindNode(part.Designation, port.B)
        where a is not null && b is not null
        let supplies = context.SuppliesOf(a.Value, b.Value).ToArray()
        where supplies.Length > 0 && supplies.All(reach => reach.Supply.Volts < port.LeastVolts)
        let best = supplies.MaxBy(reach => reach.Supply.Volts)!.Supply
        select new Finding(
            Id,
            FindingSeverity.Error,
            [part.Designation],
            $"{part.Designation} ({part.Name}) closes from {ReviewContext.Number(port.LeastVolts)} V; {best.Name} puts {ReviewContext.Number(best.Volts)} V on its control.",
            "Take a relay for this control voltage, or drive it from a higher one.",
            "ratings from the part type; IEC 61810-1, IEC 62314")
        {
            Numbers = [new("closes from", port.LeastVolts, "V"), new("control voltage", best.Volts, "V")],
        };

    private static IEnumerable<(string A, string B, double LeastVolts)> Ports(Part part) =>
    [
        .. part.Type.Circuit.OfType<Drive>().Select(drive => (drive.A, drive.B, drive.PullsIn.Volts)),
        .. part.Type.Circuit.OfType<SwitchedPath>().Where(path => path is { Port.Count: 2, AtLeast: not null }).Select(path => (path.Port[0], path.Port[1], path.AtLeast!.Value.Volts)),
    ];
}
