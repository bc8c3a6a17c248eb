using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>The most that each motor's winding may be given.</summary>
internal sealed class MotorSettings : ISettingSource
{
    private static readonly double PeakOverRms = Math.Sqrt(2);

    public IEnumerable<SettingGroup> Of(SettingsCase machine) =>
    [
        new(
            "motors",
            "Motors",
            "The least of what the motor's terminals and the driver's terminals bear for long, taken as the peak of the sine to be safe. See whether your controller asks for the root mean square or the peak.",
            [.. machine.Outputs.Where(output => output.IsMotor).SelectMany(output => output.Loads.Select(load => SettingOf(machine.Design, output, load.Part)))]),
    ];

    private static Setting SettingOf(MachineDesign design, OutputAssignment output, string motor)
    {
        var name = $"Current in each winding of {motor} ({design.FindPart(motor)!.Name}), at most";
        var id = PlainNames.Of($"current {motor}");
        double[] limits = [.. Limits(design, output, motor)];
        // Rounded down: more burns, less only loses torque.
        var (peak, rms) = limits.Length > 0 ? (RoundDown(limits.Min()), RoundDown(limits.Min() / PeakOverRms)) : (0, 0);
        return limits.Length == 0
            ? new(id, name, "", SettingState.Open, "Neither part type says what it bears.", "Read the motor's plate and the driver's data, then `proveout motor`.")
            : new(
                id,
                name,
                FormattableString.Invariant($"{rms:0.00} A r.m.s., {peak:0.00} A peak"),
                SettingState.Designed,
                "Part types of motor and driver.",
                "The motor after an hour at work: too hot to hold (about 60 °C) means less. `proveout motor` gives torque against speed.")
            {
                Number = rms,
                Unit = "A",
            };
    }

    private static double RoundDown(double amperes) => Math.Floor(100 * amperes) / 100;

    private static IEnumerable<double> Limits(MachineDesign design, OutputAssignment output, string motor) =>
        design.FindPart(output.Part)!.Type.Terminals
            .Where(terminal => output.Terminals.Contains(terminal.Name))
            .Concat(design.FindPart(motor)!.Type.Terminals.Where(terminal => terminal.Role == TerminalRole.Winding))
            .Select(terminal => terminal.Current?.Amperes)
            .OfType<double>();
}
