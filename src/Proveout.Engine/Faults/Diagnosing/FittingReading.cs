namespace Proveout.Engine.Faults;

/// <summary>A reading that a suspect explains and that the sound machine cannot show.</summary>
/// <param name="Check">Index of the check.</param>
/// <param name="Value">What was read.</param>
/// <param name="Shown">What the suspect lets the check show.</param>
public sealed record FittingReading(int Check, double Value, ReadingInterval Shown);
