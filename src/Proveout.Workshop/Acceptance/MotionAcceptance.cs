using Proveout.Engine.Electrical;

namespace Proveout.Workshop;

/// <summary>Motors, belts, frame.</summary>
internal sealed class MotionAcceptance : IAcceptanceSource
{
    private const string Practice = "Common practice.";

    public IEnumerable<AcceptanceItem> Of(AcceptanceCase machine)
    {
        string[] motors = [.. ControllerAssignments.Outputs(machine.Live).Where(output => output.IsMotor).SelectMany(output => output.Loads).Select(load => load.Part).Distinct()];
        if (motors.Length > 0)
            yield return new(
                "motors-warm", AcceptancePhase.Soak, "Motors",
                $"After an hour of moving measure the case of {string.Join(", ", motors)}.",
                "60 °C at most where a plastic part holds the motor, 80 °C on metal.",
                "Set less current, or find what is stiff.", Practice);
        if (machine.Design.Motion.Axes.Count > 0)
            yield return new(
                "return-to-stop", AcceptancePhase.FirstRun, "Steps are kept",
                $"Run {string.Join(", ", machine.Design.Motion.Axes.Select(axis => axis.Name))} over the whole travel for 30 minutes at working speed, then go to the stop again and compare.",
                "The stop answers within one full step of where it did.",
                "Steps are lost: current, speed, acceleration, or something rubs.", Practice);
        if (machine.Design.Motion.Belts.Count > 0)
            foreach (var item in Belts(machine.Design.Motion.Belts.Count))
                yield return item;
        if (machine.Design.Motion.Axes.Count > 1)
            yield return new(
                "frame-again", AcceptancePhase.AfterTenHours, "Frame and level",
                "Measure diagonals and probe the plate again; also after every move of the machine.",
                "As at first, within what the measurement can tell.",
                "Tighten the corner that the fit names, then measure once more.", Practice);
    }

    private static IEnumerable<AcceptanceItem> Belts(int count)
    {
        yield return new(
            "set-screws", AcceptancePhase.AfterAnHour, "Set screws of pulleys",
            "Try each with its key, and see that the marks across screw and shaft still meet.",
            "None turns; each mark is whole.",
            "Clean, one drop of medium thread-locking compound, on the flat of the shaft, by the torque list.", Practice);
        foreach (var (id, phase) in new[] { ("belts-again", AcceptancePhase.AfterTenHours), ("belts-trend", AcceptancePhase.EveryFiftyHours) })
            yield return new(
                id, phase, count == 1 ? "The belt by its sound" : $"{count} belts by their sound",
                "Pluck the same span with the axes in the same place as at first.",
                "The note is at most 5 % lower than at first, and that of a pair within 3 % of each other.",
                "Tension again. Lower by 15 % or more: look for a slipping clamp or a worn tooth.", Practice);
    }
}
