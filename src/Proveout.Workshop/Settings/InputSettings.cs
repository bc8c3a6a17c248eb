using System.Globalization;
using Proveout.Engine.Electrical;

namespace Proveout.Workshop;

/// <summary>What each input of the controllers reads, and which way round.</summary>
internal sealed class InputSettings : ISettingSource
{
    public IEnumerable<SettingGroup> Of(SettingsCase machine) =>
    [
        new(
            "contacts",
            "Inputs for contacts",
            "What hangs on each input, and which way round. An input whose voltage rises when its contact is operated also reads a broken wire as operated: the safe way round.",
            [.. machine.Inputs.Where(input => input.IsContact).Select(SettingOf)]),
        new("sensors", "Inputs for sensors", "What hangs on each input, and of which kind.", [.. machine.Inputs.Where(input => !input.IsContact).Select(SettingOf)]),
    ];

    private static Setting SettingOf(InputAssignment input) => new(
        PlainNames.Of($"input {input.Part} {input.Terminal} {input.Sensor}"),
        $"Input {input.Terminal} of {input.Part}",
        $"{input.Sensor} ({input.SensorName}): {Reads(input)}",
        SettingState.Computed,
        "The wiring, run live.",
        input.IsContact ? "Operate it by hand while the controller shows its inputs: it must change as said here." : "What it shows at room temperature, or with the thing in front of it, before anything is switched on.");

    private static string Reads(InputAssignment input) =>
        !input.IsContact ? input.Kinds.Count > 0 ? string.Join(" or ", input.Kinds.Select(Kind)) : "kind not said by the part types"
        : string.Create(
            CultureInfo.InvariantCulture,
            $"{(input.RisesWhenOperated ? "high" : "low")} when {input.Operated}, {(input.RisesWhenOperated ? "low" : "high")} at rest ({input.AtRest.Volts:0.0} V to {input.WhenOperated.Volts:0.0} V)");

    private static string Kind(Engine.Machine.SensorKind kind) => kind switch
    {
        Engine.Machine.SensorKind.Ntc => "thermistor, NTC",
        Engine.Machine.SensorKind.Pt100 => "platinum, 100 Ω at 0 °C",
        Engine.Machine.SensorKind.Pt1000 => "platinum, 1000 Ω at 0 °C",
        Engine.Machine.SensorKind.Thermocouple => "thermocouple",
        Engine.Machine.SensorKind.Bridge => "strain bridge",
        Engine.Machine.SensorKind.Contact => "contact",
        Engine.Machine.SensorKind.Sinking => "switches to 0 V",
        _ => "switches to its supply",
    };
}
