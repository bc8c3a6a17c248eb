using System.Globalization;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A jumper sits in another position than the design says.</summary>
internal sealed class JumperWrong : IWiringFaultRule
{
    public string Kind => "jumper-wrong";

    public string Words => "jumpers in a wrong position";

    public double Prior => Priors.JumperWrong;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from part in context.Design.Parts
        from setting in part.Jumpers
        let jumper = part.Type.Jumpers.First(candidate => candidate.Name == setting.Jumper)
        from position in jumper.Positions
        where position.Name != setting.Position
        select AtPosition(context, part, jumper, setting, position);

    private WiringFault AtPosition(WiringContext context, Part part, Jumper jumper, JumperSetting setting, JumperPosition position)
    {
        var fitted = context.Wiring.Elements.First(element =>
            element.Kind == ElementKind.Jumper && element.Subject == part.Designation && element.Name == jumper.Name);
        return WiringContext.Fault(
            this,
            $"{part.Designation}.{jumper.Name}:{position.Name}",
            $"Jumper {jumper.Name} of {part.Designation} is at {position.Name} instead of {setting.Position}.",
            [part.Designation],
            OfPosition(setting.Position, position.Name),
            "Eye: jumper map with a photograph; live test of the output's voltage before anything is plugged in.",
            new Cut(fitted.Index),
            new Join(
                context.Wiring.PartNode(part.Designation, jumper.Common),
                context.Wiring.PartNode(part.Designation, position.Post),
                fitted.LowOhms,
                fitted.HighOhms));
    }

    private static Consequence OfPosition(string right, string wrong) =>
        Volts(wrong) > Volts(right)
            ? new(Severity.Damage, $"Loads made for {right} get {wrong} and are destroyed.")
            : new(Severity.DoesNotWork, $"Loads made for {right} get {wrong} and do not run.");

    private static double? Volts(string position) =>
        double.TryParse(position.Replace("V", "", StringComparison.Ordinal).Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out var volts)
            ? volts
            : null;
}
