namespace Proveout.Workshop;

/// <summary>What a meter gave.</summary>
/// <param name="Text">The reading as a person would type it: a number in the check's unit, or <c>OL</c>.</param>
/// <param name="Instrument">What the meter says that it is; text from outside.</param>
public sealed record MeterReading(string Text, string Instrument);
