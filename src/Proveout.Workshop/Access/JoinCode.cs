namespace Proveout.Workshop;

/// <summary>A join code that was shown on the bench's terminal.</summary>
/// <param name="Hash">What is kept of the code, made as of a password; the code itself is kept nowhere.</param>
/// <param name="Person">Whose sessions it opens.</param>
/// <param name="Until">When it ends, in universal time.</param>
/// <param name="DevicesLeft">How many more devices it lets in.</param>
public sealed record JoinCode(string Hash, Guid Person, DateTimeOffset Until, int DevicesLeft);
