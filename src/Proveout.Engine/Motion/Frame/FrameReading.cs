namespace Proveout.Engine.Motion;

/// <summary>A reading and what it should be.</summary>
internal sealed record FrameReading(string Name, Uncertain Observed, Func<double[], double> Predicted);
