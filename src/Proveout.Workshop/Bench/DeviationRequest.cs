namespace Proveout.Workshop;

/// <summary>A difference from the guide or the machine file.</summary>
/// <param name="Subject">What it concerns: a check, a part, a conductor; may be empty.</param>
/// <param name="Note">What differs.</param>
/// <param name="Person">Who says so.</param>
/// <param name="Key">Made by the face once a form.</param>
public sealed record DeviationRequest(string Subject, string Note, string Person, Guid Key);
