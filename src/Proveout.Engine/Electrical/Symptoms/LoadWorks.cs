namespace Proveout.Engine.Electrical;

/// <summary>Each load works in the first state in which it should: a fan turns, a heater gets warm, a relay pulls in, a board comes up.</summary>
internal sealed class LoadWorks : ILiveCheckRule
{
    public IEnumerable<LiveObservation> Generate(LiveChecks checks) =>
        from load in checks.Loads
        let state = checks.FirstRight(load.Works)
        where state is not null
        from observation in checks.Symptom(
            $"works {LoadWords.Id(load)}",
            $"{LoadWords.Of(load)} {load.AtWork}",
            state,
            "It gets what it was made for in this state.",
            load.Works,
            Seen.Wrong)
        select observation;
}
