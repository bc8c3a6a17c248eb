namespace Proveout.Engine.Electrical;

/// <summary>A motor does not hum and twitch in place of turning, as it does with one winding only.</summary>
internal sealed class MotorIsQuiet : ILiveCheckRule
{
    public IEnumerable<LiveObservation> Generate(LiveChecks checks) =>
        from motor in checks.Loads.OfType<MotorLoad>()
        let state = checks.FirstRight(motor.Works)
        where state is not null
        from observation in checks.Symptom(
            $"quiet {LoadWords.Id(motor)}",
            $"{LoadWords.Of(motor)} neither hums nor twitches in place of turning",
            state,
            "Both windings carry their current; with one alone a motor hums and cannot turn.",
            motor.IsQuiet,
            Seen.Right)
        select observation;
}
