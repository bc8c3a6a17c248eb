using Proveout.Engine.Faults;

namespace Proveout.Cli;

/// <summary>What an instrument may show, in the check's unit; null stands for over range.</summary>
internal sealed record IntervalShape(double? Low, double? High)
{
    public static IntervalShape Of(ReadingInterval interval) => new(ValueOf(Math.Max(interval.Low, 0)), ValueOf(interval.High));

    /// <summary>A value that JSON can carry: null where it is infinite.</summary>
    public static double? ValueOf(double value) => double.IsFinite(value) ? value : null;
}
