namespace Proveout.Engine.Electrical;

/// <summary>No load works while the machine is plugged in and switched off.</summary>
internal sealed class LoadIsOffWithSwitch : ILiveCheckRule
{
    public IEnumerable<LiveObservation> Generate(LiveChecks checks) =>
        from state in checks.Model.States
        where state.Kind == ControlStateKind.Off
        from load in checks.Loads
        where load is not MotorLoad
        where checks.FirstRight(load.Works) is not null
        from observation in checks.Symptom(
            $"off {LoadWords.Id(load)}",
            $"{LoadWords.Of(load)} {load.AtRest}",
            state,
            "The switch takes the power away from everything behind it.",
            load.Rests,
            Seen.Right)
        select observation;
}
