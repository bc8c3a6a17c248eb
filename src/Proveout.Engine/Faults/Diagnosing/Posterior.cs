namespace Proveout.Engine.Faults;

/// <summary>What is to be believed after the readings; the probabilities add up to 1.</summary>
/// <param name="IsOff">True when some reading or symptom is not that of the sound machine.</param>
/// <param name="Sound">That none of the mistakes is needed and no reading is wrong.</param>
/// <param name="Unknown">That none of the modelled mistakes explains what is seen, but one that no rule generates.</param>
/// <param name="Hypotheses">The rest, most likely first.</param>
/// <remarks>
/// A hypothesis says that its mistakes are needed, not that there are no others: a further mistake that explains nothing more is as likely
/// after the readings as before, whichever hypothesis holds, and is left out of all of them (minimal diagnoses; de Kleer and Williams,
/// Artificial Intelligence 32 (1987) 97-130). While nothing is off, every fault stands alone in a hypothesis.
/// </remarks>
public sealed record Posterior(bool IsOff, double Sound, double Unknown, IReadOnlyList<Hypothesis> Hypotheses);
