using System.Globalization;
using Proveout.Engine.Faults;
using Proveout.Workshop;

namespace Proveout.Web.Tests.Samples;

/// <summary>What a person would type at a step of a sample.</summary>
internal static class Typed
{
    /// <summary>A reading that the machine as designed shows.</summary>
    public static string Good(BenchStep step) => Text(step.Check.Expectation switch
    {
        { IsOverRangeOnly: true } => ReadingInterval.OverRange,
        var interval when double.IsPositiveInfinity(interval.High) => (interval.Low * 2) + 1,
        var interval => (interval.Low + interval.High) / 2,
    });

    /// <summary>A reading that it cannot show.</summary>
    public static string Bad(BenchStep step) => Text(step.Check.Expectation.IsOverRangeOnly ? 0.3
        : step.Check.Expectation.Contains(ReadingInterval.OverRange) ? step.Check.Expectation.Low / 10
        : ReadingInterval.OverRange);

    private static string Text(double value) => double.IsPositiveInfinity(value) ? "OL" : value.ToString("0.###", CultureInfo.InvariantCulture);
}
