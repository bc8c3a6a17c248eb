namespace Proveout.Engine.Motion;

/// <summary>A reading at a frame in space.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Observed">What was read.</param>
/// <param name="At">What the unknowns give for it, and how that changes with each of them.</param>
internal sealed record SpaceReading(string Name, Uncertain Observed, Func<double[], (double Value, double[] Row)> At);
