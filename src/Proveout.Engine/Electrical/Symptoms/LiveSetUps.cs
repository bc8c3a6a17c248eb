using System.Globalization;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The set-ups of the energised machine: cautions, then what to do.</summary>
/// <remarks>Cautions: EN 50110-1 clause 6.3 (work at live parts), IEC 61010-2-033 and IEC 61010-031 (meters and leads), common practice.</remarks>
internal static class LiveSetUps
{
    private const double SecondsAState = 20;
    private const double SecondsAPlug = 6;

    /// <summary>Identifier of a set-up.</summary>
    public static string IdOf(Phase phase, LiveStage? stage, ControlState state) =>
        Slug.Of($"{(phase == Phase.InUse ? "in-use" : "live")} {stage?.Name} {state.Name}");

    /// <summary>The set-up of a stage and a state.</summary>
    public static SetUp Of(MachineDesign design, Phase phase, LiveStage? stage, ControlState state) => new(
        IdOf(phase, stage, state),
        $"{(phase == Phase.InUse ? "In use" : "Live")}: {state.Name}{(stage is null ? "" : $", {stage.Name}")}",
        [.. Plugs(design, stage), .. Operate(state)],
        [.. phase == Phase.InUse ? Looking : design.Mains is null ? LowVoltage : Mains],
        SecondsAState + (stage is null ? 0 : SecondsAPlug * UnpluggedStage.Plugs(design).Count()))
    {
        Phase = phase,
    };

    private static string[] Looking =>
    [
        "The machine is energised. Only look, listen and hold a hand near: never touch metal, heaters or moving things to find out.",
        "The dead checks come first. At smell, smoke, a bang or a tingle pull the mains plug; nobody repairs anything while it is plugged in.",
        "Who may work on mains is ruled where you live: local codes and licensed practice come first.",
    ];

    private static string[] LowVoltage =>
    [
        "The machine is energised at extra-low voltage. A slip of a probe can short a supply and throw sparks: rings and watches off, one lead clipped on, one hand.",
        "The dead checks come first. Set the meter to volts before it touches anything: on ohms or amperes it shorts or is destroyed.",
        "Hands, hair and cables out of reach of what may move; heaters may be hot.",
    ];

    private static string[] Mains =>
    [
        "Mains is on. Local codes and licensed practice come first: only a competent person measures here, and is the only one who plugs in.",
        "Covers stay on wherever no lead has to reach. Meter and leads of CAT II 300 V at least, with finger guards (IEC 61010-2-033); one hand, the other away from metal.",
        "The dead checks come first. Set the meter to volts before it touches anything; move leads only with the plug pulled wherever mains is within reach.",
        "Hands, hair and cables out of reach of what may move; heaters may be hot.",
    ];

    private static IEnumerable<string> Plugs(MachineDesign design, LiveStage? stage)
    {
        if (stage is null)
            yield break;
        var plugs = string.Join(", ", UnpluggedStage.Plugs(design).Select(plug => $"{plug.Part} {plug.Connector}"));
        yield return string.Create(CultureInfo.InvariantCulture, $"With the machine dead, pull these plugs and no others: {plugs}.");
    }

    private static IEnumerable<string> Operate(ControlState state)
    {
        if (state.After is { } before)
            yield return $"Come from this state: {before.Name}.";
        yield return state.Kind == ControlStateKind.Off
            ? "Plug in and leave the machine switched off."
            : "Plug in and switch on; every control at rest but those named here.";
        foreach (var (part, control, position) in state.Positions)
            if (state.Kind != ControlStateKind.Off)
                yield return $"Hold {control} of {part} in the position: {position}.";
        yield return state.Commands.Count == 0
            ? "Command no output."
            : $"Command fully on, and nothing else: {string.Join(", ", state.Commands.Select(command => $"{command.Part} {command.Command}"))}.";
    }
}
