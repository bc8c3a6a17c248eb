using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Travel of the axes, and the steps of each motor for a millimetre.</summary>
internal sealed class AxisSettings : ISettingSource
{
    public IEnumerable<SettingGroup> Of(SettingsCase machine) =>
    [
        new("travel", "Travel", "How far each axis goes.", [.. machine.Design.Motion.Axes.Select(TravelOf)]),
        new(
            "steps",
            "Steps",
            "Full steps from teeth, pitch and lead along the way from motor to axis. Multiply them by the microsteps that the driver makes.",
            [.. machine.Motors.SelectMany(motor => motor.Axes.Select(share => StepsOf(motor, share)))]),
    ];

    private static Setting TravelOf(Axis axis) => new(
        PlainNames.Of($"travel {axis.Name}"),
        $"Travel of {axis.Name}",
        string.Create(CultureInfo.InvariantCulture, $"{axis.Low.Millimeters:0.###} mm to {axis.High.Millimeters:0.###} mm"),
        SettingState.Designed,
        "Axes of the machine file.",
        "Push it by hand from end to end, dead, and measure: set no more than it goes freely.")
    {
        Number = axis.High.Millimeters - axis.Low.Millimeters,
        Unit = "mm",
    };

    private static Setting StepsOf(MotorRow motor, MotorShare share) => new(
        PlainNames.Of($"steps {motor.Motor} {share.Axis}"),
        $"Full steps of {motor.Motor} for 1 mm of {share.Axis}",
        string.Create(CultureInfo.InvariantCulture, $"{Math.Sign(share.TurnsPerMm) / share.MmPerFullStep:+0.####;-0.####} ({(share.TurnsPerMm > 0 ? "as" : "against")} its positive turn{(motor.IsTied ? ", together with the others" : "")})"),
        SettingState.Computed,
        "Linear algebra of the belts, pulleys and screws (docs/methods/belts.md).",
        "A jog of 100 mm or more, measured with a rule or dial: set steps times commanded over measured.")
    {
        Number = Math.Sign(share.TurnsPerMm) / share.MmPerFullStep,
        Unit = "1/mm",
    };
}
