namespace Proveout.Engine.Electrical;

/// <summary>A kind of symptom, or of live reading: which checks of it a machine has.</summary>
internal interface ILiveCheckRule
{
    /// <summary>The checks of a machine.</summary>
    IEnumerable<LiveObservation> Generate(LiveChecks checks);
}
