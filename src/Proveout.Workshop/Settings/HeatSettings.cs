namespace Proveout.Workshop;

/// <summary>Sensor, limit, guard and controller of everything that is heated.</summary>
internal sealed class HeatSettings : ISettingSource
{
    private const string Model = "The heat model of the machine file (docs/methods/heat.md).";

    // Above the overshoot of a controller that is set as below, and well under what begins to smell; common practice.
    private const double MostAboveTargetKelvin = 15;
    private const string ByLog = "A log of this heater's own warm-up and hold.";

    public IEnumerable<SettingGroup> Of(SettingsCase machine) =>
    [
        new(
            "heat",
            "Heat",
            "What to tell the controller of each heater before it is first heated. Gains stand for an output from 0 to 1; multiply them by 100 or 255 where the controller counts so.",
            [.. machine.Design.Heated.Zip(machine.Heat.Bodies).SelectMany(pair => OfBody(pair.First, pair.Second))]),
    ];

    private static IEnumerable<Setting> OfBody(Engine.Machine.HeatedBody body, HeatedView view)
    {
        yield return new(Id(view, "sensor"), $"Sensor of {view.Name}", $"{view.SensorName}, held against {SettingWords.Figure(body.PullUp.Ohms, "ohm")}", SettingState.Designed, "Section `heated` of the machine file.", "Its resistance at the loose plug in a room whose temperature is known.");
        yield return Number(view, "target", $"Temperature that {view.Name} is held at", view.TargetCelsius, "°C", FormattableString.Invariant($"{view.TargetCelsius:0} °C"), SettingState.Designed, "Section `heated` of the machine file.", "What the first test piece asks for.");
        var highest = Math.Floor(view.TargetCelsius + MostAboveTargetKelvin);
        yield return Number(view, "highest", $"Temperature of {view.Name} above which its heater is switched off", highest, "°C", FormattableString.Invariant($"{highest:0} °C"), SettingState.Computed, "Target and 15 K; common practice.", "The least that anything at it bears: liner, bond, magnet. Take the lower.");
        if (view.Guard is { } guard)
            foreach (var setting in OfGuard(view, guard))
                yield return setting;
        else
            yield return new(Id(view, "guard"), $"Guard of {view.Name}", "", SettingState.Open, "It warms up so slowly near its target that no guard can tell a fallen sensor from it.", "Give it an independent thermal cut-off, and a time after which it must have reached its target.");
        if (view.Controller is { } controller)
            foreach (var setting in OfController(view, controller))
                yield return setting;
    }

    private static IEnumerable<Setting> OfGuard(HeatedView view, GuardView guard)
    {
        // The window is given as computed; the rise is rounded up and the stray down, so that the guard trips sooner rather than later.
        yield return Number(view, "guard-window", $"Guard of {view.Name}: time in which it must rise", guard.WindowSeconds, "s", FormattableString.Invariant($"{guard.WindowSeconds:0} s"), SettingState.Computed, Model, ByLog);
        yield return Number(view, "guard-rise", $"Guard of {view.Name}: least rise in that time", guard.LeastRiseKelvin, "K", FormattableString.Invariant($"{guard.LeastRiseKelvin:0.0} K"), SettingState.Computed, Model, ByLog);
        yield return Number(view, "guard-stray", $"Guard of {view.Name}: most stray while it holds", guard.StrayKelvin, "K", FormattableString.Invariant($"{guard.StrayKelvin:0} K"), SettingState.Computed, Model, ByLog);
        yield return Number(view, "guard-stray-time", $"Guard of {view.Name}: for longest", guard.StraySeconds, "s", FormattableString.Invariant($"{guard.StraySeconds:0} s"), SettingState.Computed, Model, ByLog);
    }

    private static IEnumerable<Setting> OfController(HeatedView view, ControllerView controller)
    {
        if (controller.Parallel.FirstOrDefault(form => form.FullOutput == 1) is not { } form)
            yield break;
        const string From = "SIMC (Skogestad 2003) on the heat model, slowed until robust at all corners of its tolerances.";
        yield return Number(view, "proportional", $"Controller of {view.Name}: proportional", form.Proportional, "1/K", SettingWords.Figure(form.Proportional, "1/K"), SettingState.Computed, From, ByLog);
        yield return Number(view, "integral", $"Controller of {view.Name}: integral", form.Integral, "1/(K·s)", SettingWords.Figure(form.Integral, "1/(K·s)"), SettingState.Computed, From, ByLog);
        yield return Number(view, "derivative", $"Controller of {view.Name}: derivative", form.Derivative, "s/K", SettingWords.Figure(form.Derivative, "s/K"), SettingState.Computed, From, ByLog);
    }

    private static Setting Number(HeatedView view, string what, string name, double number, string unit, string words, SettingState state, string from, string later) =>
        new(Id(view, what), name, words, state, from, later) { Number = number, Unit = unit };

    private static string Id(HeatedView view, string what) => PlainNames.Of($"{view.Name} {what}");
}
