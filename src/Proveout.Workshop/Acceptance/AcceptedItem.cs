namespace Proveout.Workshop;

/// <summary>What was found of an item on a build.</summary>
/// <param name="ItemId">The item.</param>
/// <param name="Found"><see cref="AcceptanceAnswers.Good"/> or <see cref="AcceptanceAnswers.NotGood"/>.</param>
/// <param name="Note">What was noted.</param>
/// <param name="Person">Who looked.</param>
/// <param name="When">When, in universal time.</param>
public sealed record AcceptedItem(string ItemId, string Found, string Note, string Person, DateTimeOffset When);
