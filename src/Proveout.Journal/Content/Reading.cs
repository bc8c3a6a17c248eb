namespace Proveout.Journal;

/// <summary>What was read at one check, as typed and as understood.</summary>
/// <param name="CheckId">The check of the plan.</param>
/// <param name="SetUp">How the machine and the instrument were set for it; may be empty.</param>
/// <param name="Text">The reading exactly as it was typed.</param>
/// <param name="ValueSi">Its value in the SI unit of the quantity; null when it has none, as for over-range.</param>
/// <param name="OverRange">The instrument showed that the value is beyond its range.</param>
/// <param name="Unit">The SI unit of <paramref name="ValueSi"/>, or empty.</param>
/// <param name="Verdict">The verdict at the time of entry, in words.</param>
public sealed record Reading(
    string CheckId, string SetUp, string Text, double? ValueSi, bool OverRange, string Unit, string Verdict);
