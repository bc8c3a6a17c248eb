namespace Proveout.Engine.Electrical;

/// <summary>Releasing a stop does not start anything again by itself (ISO 13850, from memory).</summary>
internal sealed class StaysOffAfterStop : ILiveCheckRule
{
    public IEnumerable<LiveObservation> Generate(LiveChecks checks) =>
        from state in checks.Model.States
        where state.Kind == ControlStateKind.Released
        let stopped = StopTakesPower.Stopped(checks, state)
        where stopped.Count > 0
        from observation in checks.Symptom(
            $"released {state.Name}",
            $"{LoadWords.List([.. stopped.Select(load => load.Part.Designation).Distinct()])} stay off until started again",
            state,
            "Releasing the stop only allows a restart.",
            view => Seen.All(stopped.Select(load => load.Rests(view))),
            Seen.Right)
        select observation;
}
