namespace Proveout.Workshop;

/// <summary>Something that was done to a way in, as the record of access keeps it.</summary>
/// <param name="When">When, in universal time.</param>
/// <param name="Person">Whose way in.</param>
/// <param name="Name">The person's name at that time.</param>
/// <param name="Event">What was done.</param>
public sealed record AccessNote(DateTimeOffset When, Guid Person, string Name, AccessEvent Event);
