namespace Proveout.Workshop;

/// <summary>What came of a part.</summary>
/// <param name="Designation">The part.</param>
/// <param name="Came">One of <see cref="Arrivals.Answers"/>.</param>
/// <param name="Note">In what it differs; may be empty unless it does.</param>
/// <param name="Person">Who says so.</param>
/// <param name="Key">Made by the face once a form.</param>
public sealed record ArrivalRequest(string Designation, string Came, string Note, string Person, Guid Key);
