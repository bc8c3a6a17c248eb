namespace Proveout.Engine.Electrical;

/// <summary>Each load that an output commands rests while nothing is commanded.</summary>
internal sealed class LoadRests : ILiveCheckRule
{
    public IEnumerable<LiveObservation> Generate(LiveChecks checks) =>
        from load in checks.Loads
        where load is not MotorLoad
        where checks.FirstRight(load.Works) is { Commands.Count: > 0 }
        from observation in checks.Symptom(
            $"rests {LoadWords.Id(load)}",
            $"{LoadWords.Of(load)} {load.AtRest}",
            checks.Resting,
            "Its output is off, so it gets nothing.",
            load.Rests,
            Seen.Right)
        select observation;
}
