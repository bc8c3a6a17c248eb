namespace Proveout.Workshop;

/// <summary>A check left out.</summary>
/// <param name="CheckId">Which.</param>
/// <param name="Reason">Why.</param>
/// <param name="Person">By whom.</param>
/// <param name="Key">Made by the face once a form.</param>
public sealed record SkipRequest(string CheckId, string Reason, string Person, Guid Key)
{
    /// <summary>True when its maker saw the check open: what somebody else has entered there since is not overturned.</summary>
    public bool SeenOpen { get; init; }
}
