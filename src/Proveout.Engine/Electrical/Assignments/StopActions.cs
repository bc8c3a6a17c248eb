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
               let released = model.States.FirstOrDefault(after => after.Kind == ControlStateKind.Released && after.After == state)
               select new StopAction(
                   state.Positions[0].Part,
                   state.Positions[0].Position,
                   Designations(stopped),
                   released is null ? [] : Designations(StopTakesPower.Stopped(checks, released).Where(stopped.Contains))),
        ];
    }

    private static string[] Designations(IEnumerable<ILoad> loads) => [.. loads.Select(load => load.Part.Designation).Distinct(StringComparer.Ordinal)];
}
