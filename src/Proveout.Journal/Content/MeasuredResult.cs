namespace Proveout.Journal;

/// <summary>A figure that came of a measurement.</summary>
/// <param name="Name">What it is, in words.</param>
/// <param name="Value">Best estimate.</param>
/// <param name="Expanded">Expanded uncertainty, coverage factor 2 (JCGM 100:2008, 6.2); 0 when it is not known.</param>
/// <param name="Unit">Unit of both; empty for a plain number.</param>
public sealed record MeasuredResult(string Name, double Value, double Expanded, string Unit);
