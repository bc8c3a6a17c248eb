namespace Proveout.Engine.Heat;

/// <summary>A stretch of time in which nothing was logged.</summary>
/// <param name="Line">Line of the row after it.</param>
/// <param name="FromSeconds">When it begins, from the first row of the run.</param>
/// <param name="ToSeconds">When it ends.</param>
public readonly record struct LogGap(int Line, double FromSeconds, double ToSeconds);
