namespace Proveout.Engine.Faults;

/// <summary>Why a suspect is one, and what would clear it.</summary>
/// <param name="Fitting">The readings that it explains and that the sound machine cannot show, the most telling first.</param>
/// <param name="RuledOutBy">The check that best rules it out if it is not true; null when none surely can.</param>
public sealed record SuspectReasons(IReadOnlyList<FittingReading> Fitting, RulingCheck? RuledOutBy);
