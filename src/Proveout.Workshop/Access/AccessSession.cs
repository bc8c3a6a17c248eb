namespace Proveout.Workshop;

/// <summary>A device on which a person is signed in.</summary>
/// <param name="Id">Names it on the page of devices; opens nothing.</param>
/// <param name="Hash">SHA-256 of the token that the device holds; the token itself is kept nowhere.</param>
/// <param name="Person">Who.</param>
/// <param name="Started">When the person signed in, in universal time.</param>
/// <param name="Used">When it was last used, to within <see cref="SessionTimes.UsedStep"/>.</param>
/// <param name="Device">The device in a word, and where it called from.</param>
public sealed record AccessSession(Guid Id, string Hash, Guid Person, DateTimeOffset Started, DateTimeOffset Used, string Device)
{
    /// <summary>Whether it still holds at a time.</summary>
    public bool HoldsAt(DateTimeOffset now) => now - Used < SessionTimes.Idle && now - Started < SessionTimes.Whole;
}
