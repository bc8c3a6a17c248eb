namespace Proveout.Engine.Electrical;

/// <summary>A motor turns the way that it is told: one winding reversed turns it round, both reversed do not.</summary>
internal sealed class MotorTurnsTheRightWay : ILiveCheckRule
{
    public IEnumerable<LiveObservation> Generate(LiveChecks checks) =>
        from motor in checks.Loads.OfType<MotorLoad>()
        let state = checks.FirstRight(motor.Works)
        where state is not null
        from observation in checks.Symptom(
            $"direction {LoadWords.Id(motor)}",
            $"{LoadWords.Of(motor)} turns the way that it is told",
            state,
            "The order of the currents in its windings decides the way.",
            motor.TurnsTheRightWay,
            Seen.CannotTell)
        select observation;
}
