namespace Proveout.Workshop;

/// <summary>A reading as typed.</summary>
/// <param name="CheckId">At which check.</param>
/// <param name="Text">What was typed: a value, <c>OL</c>, <c>open</c> or <c>-</c>.</param>
/// <param name="Person">By whom.</param>
/// <param name="Key">Made by the face once a form; the same key twice is one entry.</param>
public sealed record ReadingRequest(string CheckId, string Text, string Person, Guid Key)
{
    /// <summary>True when its maker saw the check open: what somebody else has entered there since is not overturned.</summary>
    public bool SeenOpen { get; init; }
}
