namespace Proveout.Engine.Electrical;

/// <summary>Finds what each stop of a machine stops, by running the sound machine live.</summary>
public static class StopActions
{
    /// <summary>The stops that take power from something.</summary>
    public static IReadOnlyList<StopAction> Of(LiveModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        var checks = new LiveChecks(model);
        return
        [
            .. from state in model.States
               where state.Kind == ControlStateKind.Stopped
               let stopped = StopTakesPower.Stopped(checks, state)
               where stopped.Count > 0
               select new StopAction(state.Positions[0].Part, state.Positions[0].Position, [.. stopped.Select(load => load.Part.Designation).Distinct(StringComparer.Ordinal)]),
        ];
    }
}
