namespace Proveout.Journal;

/// <summary>What stands on a shared page.</summary>
/// <param name="Mark">Another one at each change. No number that counts: after a backup was put back it could come again for something else.</param>
/// <param name="Content">The text; empty before anything was written.</param>
public sealed record SharedText(Guid Mark, string Content);
