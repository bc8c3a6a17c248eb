namespace Proveout.Engine.Heat;

/// <summary>A log of heaters, read and thinned.</summary>
/// <param name="File">Name of the file as the user gave it.</param>
/// <param name="Rows">How many rows were read.</param>
/// <param name="Runs">Its runs in order; of very many the longest.</param>
/// <param name="Ignored">Headings of columns that are not used.</param>
/// <param name="DroppedRuns">How many short runs were left out.</param>
/// <param name="FullOutput">What was taken for full output; null when there is no output.</param>
/// <param name="IsFullOutputTaken">True when that follows from the largest value and not from a heading or a person.</param>
/// <param name="IsCutShort">True when the last row breaks off, as when the power fails.</param>
public sealed record HeatLog(
    string File, long Rows, IReadOnlyList<LogRun> Runs, IReadOnlyList<string> Ignored, int DroppedRuns, double? FullOutput, bool IsFullOutputTaken, bool IsCutShort)
{
    /// <summary>The run that lasts longest: a number from 0.</summary>
    public int LongestRun => Runs.Index().MaxBy(run => run.Item.LastsSeconds).Index;
}
