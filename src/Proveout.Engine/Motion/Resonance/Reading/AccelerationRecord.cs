namespace Proveout.Engine.Motion;

/// <summary>What was kept of a recording of accelerations.</summary>
/// <param name="Name">File name as the user gave it.</param>
/// <param name="RateHertz">Samples a second.</param>
/// <param name="Rows">Rows that were read.</param>
/// <param name="Seconds">How long the samples last that were used.</param>
/// <param name="Directions">Each direction of the sensor, x before y before z.</param>
/// <param name="Notes">What was noticed while reading that does not stop the work, a sentence each.</param>
public sealed record AccelerationRecord(
    string Name, double RateHertz, long Rows, double Seconds, IReadOnlyList<DirectionRecord> Directions, IReadOnlyList<string> Notes);

/// <summary>One direction of a sensor.</summary>
/// <param name="Name"><c>x</c>, <c>y</c> or <c>z</c>.</param>
/// <param name="Spectrum">Its power spectral density.</param>
/// <param name="Mean">Mean acceleration, in m/s².</param>
/// <param name="Variance">Mean square about it, in (m/s²)².</param>
/// <param name="WindowedVariance">Mean square of the windowed segments, in (m/s²)²: what the density sums up to.</param>
/// <param name="Rings">What followed blows, in the unit of the file.</param>
public sealed record DirectionRecord(string Name, PowerDensity Spectrum, double Mean, double Variance, double WindowedVariance, IReadOnlyList<Ring> Rings);
