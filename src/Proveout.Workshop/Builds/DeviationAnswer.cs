namespace Proveout.Workshop;

/// <summary>Whether what another build noted is so in this one.</summary>
/// <param name="NotedIn">Identifier of the build that noted it.</param>
/// <param name="NotedAt">Sequence of the entry there.</param>
/// <param name="Holds">True when it is so here too.</param>
/// <param name="Note">What was seen; may be empty.</param>
/// <param name="Person">Who says so.</param>
/// <param name="Key">Made by the face once a form.</param>
public sealed record DeviationAnswer(string NotedIn, int NotedAt, bool Holds, string Note, string Person, Guid Key);
