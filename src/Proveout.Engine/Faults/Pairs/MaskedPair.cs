namespace Proveout.Engine.Faults;

/// <summary>Two faults that the plan does not surely catch when both are made.</summary>
/// <param name="One">Index of the first fault.</param>
/// <param name="Two">Index of the second, greater than that of the first.</param>
/// <param name="Kind">Which of them the plan catches alone.</param>
/// <param name="Severity">What both together do.</param>
/// <param name="Shows">Which other checks would surely catch them; none when they are indistinguishable from the sound machine.</param>
public sealed record MaskedPair(int One, int Two, PairKind Kind, Severity Severity, TogetherShows Shows)
{
    /// <summary>True when no check surely catches both together.</summary>
    public bool IsIndistinguishable => Shows.CatchingChecks.Count == 0;

    /// <summary>True when the pair can hurt or destroy and a check exists that would surely catch it.</summary>
    public bool AsksForCheck => Severity >= Severity.Damage && !IsIndistinguishable;
}
