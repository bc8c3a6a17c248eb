using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A conductor of the mains or of protective bonding survives a fault until its device interrupts.</summary>
internal sealed class ConductorBearsFault : IReviewRule
{
    public string Id => "conductor-bears-fault";

    public string Words => "heat of a fault in mains and protective conductors until the device interrupts";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from conductor in context.Design.Conductors
        let device = DeviceBefore(context, conductor)
        where device is not null
        let fuse = (Fuse)device.Part!
        let letThrough = Adiabatic.LetThrough(fuse.Curve!.Value, fuse.Rating!.Value.Amperes, context.Settings.ShortCircuit?.Amperes ?? double.PositiveInfinity)
        let least = Adiabatic.LeastSquareMillimetres(letThrough, Adiabatic.PvcCore)
        where conductor.CrossSection.SquareMillimeters < least
        select new Finding(
            Id,
            FindingSeverity.Error,
            [conductor.Id, device.Subject],
            $"{conductor.Id} from {conductor.From} to {conductor.To} has {ReviewContext.Number(conductor.CrossSection.SquareMillimeters, 2)} mm²; before {PathWords.Plain(device)} ({ReviewContext.Number(fuse.Rating!.Value.Amperes)} A) interrupts a fault, {ReviewContext.Number(letThrough, 0)} A²s ask for {ReviewContext.Number(Math.Ceiling(least * 100) / 100, 2)} mm².",
            "Take a thicker conductor or a smaller, quicker device.",
            "IEC 60364-4-43 clause 434.5.2, IEC 60364-5-54 clause 543.1.2 (k = 115, PVC)")
        {
            Numbers = [new("cross-section", conductor.CrossSection.SquareMillimeters, "mm²"), new("least", least, "mm²"), new("let through", letThrough, "A²s")],
        };

    private static NetworkElement? DeviceBefore(ReviewContext context, Conductor conductor) =>
        conductor.Colour == ConductorColour.GreenYellow ? Devices(context, LinesOf(context, conductor)).MaxBy(Rating)
        : context.IsMains(conductor) ? Devices(context, [context.Wiring.TerminalNode(conductor.From), context.Wiring.TerminalNode(conductor.To)]).MinBy(Rating)
        : null;

    // A fault to metal flows in the line of the part that the protective conductor protects.
    private static IEnumerable<int> LinesOf(ReviewContext context, Conductor conductor) =>
        from part in new[] { conductor.From.Part, conductor.To.Part }
        from terminal in context.Design.FindPart(part)!.Type.Terminals
        where terminal.Role == TerminalRole.Line
        select context.Wiring.TerminalNode(new(part, terminal.Name));

    private static IEnumerable<NetworkElement> Devices(ReviewContext context, IEnumerable<int> nodes) =>
        from node in nodes
        from reach in context.SuppliesAt(node)
        where reach.Supply.IsMains
        let nearest = reach.WayTo(node).Select(step => step.Element).FirstOrDefault(element => element.Part is Fuse { Rating: not null, Curve: not (null or FuseCurve.Thermal) })
        where nearest is not null
        select nearest;

    private static double Rating(NetworkElement device) => ((Fuse)device.Part!).Rating!.Value.Amperes;
}
