namespace Proveout.Engine.Heat;

/// <summary>Why a run of a log begins.</summary>
public enum LogRunStart
{
    /// <summary>It is the first.</summary>
    First,

    /// <summary>The time jumps back.</summary>
    TimeBack,

    /// <summary>The line of headings stands there again.</summary>
    HeadingsAgain,

    /// <summary>What is shown jumps back to where it began.</summary>
    TemperatureBack,
}

/// <summary>A stretch of a log between two starts of controller or logger.</summary>
/// <param name="Start">Why it begins.</param>
/// <param name="FirstLine">Line of its first row.</param>
/// <param name="LastLine">Line of its last row.</param>
/// <param name="Rows">How many rows it has.</param>
/// <param name="Seconds">Times from its first row, rising.</param>
/// <param name="Lines">Line of the first row that each time stands for.</param>
/// <param name="Sensors">Temperatures in °C.</param>
/// <param name="Outputs">Outputs as a share of full.</param>
/// <param name="Targets">Temperatures asked for in °C.</param>
public sealed record LogRun(
    LogRunStart Start, int FirstLine, int LastLine, long Rows, double[] Seconds, int[] Lines, IReadOnlyList<LogSeries> Sensors, IReadOnlyList<LogSeries> Outputs, IReadOnlyList<LogSeries> Targets)
{
    /// <summary>Median time between rows; zero when there is one row only.</summary>
    public double StepSeconds { get; init; }

    /// <summary>Rows that bear the time of the row before, or one that is a little earlier: a clock coarser than the log, or a busy logger.</summary>
    public long RepeatedTimes { get; init; }

    /// <summary>Gaps, in order.</summary>
    public IReadOnlyList<LogGap> Gaps { get; init; } = [];

    /// <summary>What is wrong with its readings.</summary>
    public IReadOnlyList<LogFlaw> Flaws { get; init; } = [];

    /// <summary>The longest stretch of one and the same reading while an output was on, of each sensor that has one.</summary>
    public IReadOnlyList<LogFlaw> LongestSame { get; init; } = [];

    /// <summary>How long it lasts.</summary>
    public double LastsSeconds => Seconds.Length > 0 ? Seconds[^1] : 0;
}
