namespace Proveout.Workshop;

/// <summary>A mistake that was found and mended.</summary>
/// <param name="FaultId">Identifier of the fault.</param>
/// <param name="Note">How it was found or mended; may be empty.</param>
/// <param name="Person">By whom.</param>
/// <param name="Key">Made by the face once a form.</param>
public sealed record MistakeRequest(string FaultId, string Note, string Person, Guid Key);
