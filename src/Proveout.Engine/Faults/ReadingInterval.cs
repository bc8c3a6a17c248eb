namespace Proveout.Engine.Faults;

/// <summary>Every value that an instrument may show, on an axis that ends in "over range".</summary>
/// <param name="Low">Lowest value shown; <see cref="OverRange"/> when only that can be shown.</param>
/// <param name="High">Highest value shown; <see cref="OverRange"/> when that can be shown too.</param>
/// <remarks>Values are in the check's own unit. Low ≤ High; the interval is closed.</remarks>
public readonly record struct ReadingInterval(double Low, double High)
{
    /// <summary>The value that stands for "over range".</summary>
    public const double OverRange = double.PositiveInfinity;

    /// <summary>An interval that every reading lies in: no evidence in either direction.</summary>
    public static ReadingInterval Anything { get; } = new(double.NegativeInfinity, OverRange);

    /// <summary>True when the instrument can only show "over range".</summary>
    public bool IsOverRangeOnly => double.IsPositiveInfinity(Low);

    /// <summary>True when a value may be shown.</summary>
    public bool Contains(double value) => Low <= value && value <= High;

    /// <summary>True when no value belongs to both.</summary>
    public bool IsDisjointFrom(ReadingInterval other) => other.Low > High || other.High < Low;

    /// <summary>The smallest interval that holds both.</summary>
    public ReadingInterval Hull(ReadingInterval other) => new(Math.Min(Low, other.Low), Math.Max(High, other.High));
}
