namespace Proveout.Engine.Faults;

/// <summary>Says what an order of checks takes.</summary>
internal static class BenchOrderWords
{
    /// <summary>The time, its parts and how far the order is proved, in sentences.</summary>
    public static string Of(BenchOrder order) => FormattableString.Invariant(
        $"In this order about {Math.Ceiling(order.Time.Seconds / 60)} min: set-ups {Minutes(order.Time.SetUpSeconds)}, readings {Minutes(order.Time.ReadingSeconds)}, {Count(order.Time.LeadMoves, "lead move")} {Minutes(order.Time.LeadMoveSeconds)}, {Count(order.Time.MeterChanges, "meter change")} {Minutes(order.Time.MeterChangeSeconds)}. ")
        + Proof(order);

    private static string Proof(BenchOrder order) => order.Gap == 0
        ? "Proved: no other order of these checks takes less that keeps the set-ups and puts what would catch shock first, then fire, damage and the rest, and what strains the wiring last."
        : FormattableString.Invariant(
            $"No order of these checks that keeps the set-ups and puts what would catch shock first, then fire, damage and the rest, and what strains the wiring last, takes less than {Math.Floor(order.LowerBoundSeconds / 6) / 10:0.0} min.");

    private static string Minutes(double seconds) => FormattableString.Invariant($"{Math.Ceiling(seconds / 6) / 10:0.0} min");

    private static string Count(int count, string thing) => FormattableString.Invariant($"{count} {thing}{(count == 1 ? "" : "s")}");
}
