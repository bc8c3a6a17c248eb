namespace Proveout.Engine.Electrical;

/// <summary>A stop that is held pressed takes the power away from what it should stop.</summary>
internal sealed class StopTakesPower : ILiveCheckRule
{
    public IEnumerable<LiveObservation> Generate(LiveChecks checks) =>
        from state in checks.Model.States
        where state.Kind == ControlStateKind.Stopped
        let stopped = Stopped(checks, state)
        where stopped.Count > 0
        from observation in checks.Symptom(
            $"stop {state.Name}",
            $"{LoadWords.List([.. stopped.Select(load => load.Part.Designation).Distinct()])} stop and stay off while every output is commanded",
            state,
            "The stop cuts the power itself (IEC 60204-1 clause 9.2.2), whatever the controller commands.",
            view => Seen.All(stopped.Select(load => load.Rests(view))),
            Seen.Right)
        select observation;

    /// <summary>What works with every output on and rests in a state.</summary>
    public static IReadOnlyList<ILoad> Stopped(LiveChecks checks, ControlState state) =>
    [
        .. checks.Loads.Where(load =>
            load.Works(checks.Sound(checks.Everything)) == Seen.Right && load.Rests(checks.Sound(state)) == Seen.Right),
    ];
}
