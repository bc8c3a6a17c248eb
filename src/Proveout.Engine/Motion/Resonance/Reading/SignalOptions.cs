namespace Proveout.Engine.Motion;

/// <summary>How a recording of accelerations is read.</summary>
/// <param name="TimeUnit">Unit of the time when its heading names none; empty to ask for it.</param>
/// <param name="AccelerationUnit">Unit of the accelerations when their headings name none; empty to ask for it.</param>
/// <param name="ResolutionHertz">Distance of two frequencies of the spectrum that is aimed at.</param>
/// <param name="SegmentLength">Samples of a segment, a power of two; null to choose it by the resolution.</param>
public sealed record SignalOptions(string TimeUnit = "", string AccelerationUnit = "", double ResolutionHertz = 0.5, int? SegmentLength = null);
