using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Outcomes of a symptom.</summary>
internal static class Seen
{
    /// <summary>As it should be, 1.</summary>
    public static readonly ReadingInterval Right = new(1, 1);

    /// <summary>Surely not as it should be, 0.</summary>
    public static readonly ReadingInterval Wrong = new(0, 0);

    /// <summary>Either.</summary>
    public static readonly ReadingInterval CannotTell = new(0, 1);

    /// <summary>Judges a value that should be high: above one limit right, below another wrong, between them it cannot be told.</summary>
    public static ReadingInterval High(double value, double rightFrom, double wrongTo) =>
        value >= rightFrom ? Right : value <= wrongTo ? Wrong : CannotTell;

    /// <summary>Judges a value that should be low.</summary>
    public static ReadingInterval Low(double value, double rightTo, double wrongFrom) =>
        value <= rightTo ? Right : value >= wrongFrom ? Wrong : CannotTell;

    /// <summary>Right when all are right, wrong when any is surely wrong.</summary>
    public static ReadingInterval All(IEnumerable<ReadingInterval> seen)
    {
        var (low, high) = (1.0, 1.0);
        foreach (var one in seen)
            (low, high) = (Math.Min(low, one.Low), Math.Min(high, one.High));
        return new(low, high);
    }
}
