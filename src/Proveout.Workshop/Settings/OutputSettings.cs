using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>What each output of the controllers drives.</summary>
internal sealed class OutputSettings : ISettingSource
{
    public IEnumerable<SettingGroup> Of(SettingsCase machine) =>
    [
        new(
            "outputs",
            "Outputs",
            "What works when each output alone is commanded, found by running the sound machine live. Give each output this job and no other.",
            [.. machine.Outputs.Select(output => SettingOf(machine.Design, output))]),
    ];

    private static Setting SettingOf(MachineDesign design, OutputAssignment output) => new(
        PlainNames.Of($"output {output.Part} {output.Command}"),
        $"Output {output.Command} of {output.Part} ({string.Join(", ", output.Terminals)})",
        Drives(design, output),
        SettingState.Computed,
        "The wiring, run live.",
        "The first command of this output at its stage of energising: what then works must be this.")
    {
        Number = output.IsMotor ? null : output.Current.Amperes,
        Unit = output.IsMotor ? "" : "A",
    };

    private static string Drives(MachineDesign design, OutputAssignment output) =>
        output.Loads.Count == 0
            ? output.WiredTo.Count == 0 ? "nothing" : $"a signal to {string.Join(" and ", output.WiredTo.Select(part => Named(part, design.FindPart(part)!.Name)))}"
            : string.Join("; ", output.Loads.Select(load => $"{Named(load.Part, load.Name)} {load.AtWork}"))
                + (output.IsMotor ? "" : string.Create(CultureInfo.InvariantCulture, $"; about {output.Current.Amperes:0.00} A"));

    private static string Named(string part, string name) => name.Length == 0 ? part : $"{part} ({name})";
}
