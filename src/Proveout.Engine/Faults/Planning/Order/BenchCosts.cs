namespace Proveout.Engine.Faults;

/// <summary>What going from one check to the next costs by hand. Estimates from common practice; they order checks and prove nothing.</summary>
/// <param name="LeadMoveSeconds">Finding the next place and setting one lead on it.</param>
/// <param name="MeterChangeSeconds">Turning the meter to another kind of measurement, changing or zeroing its leads.</param>
public sealed record BenchCosts(double LeadMoveSeconds, double MeterChangeSeconds)
{
    /// <summary>Two hand-held leads and one meter.</summary>
    public static BenchCosts ByHand { get; } = new(4, 15);

    /// <summary>What a check takes with its leads in place and its meter set: its time without the lead moves that it counts.</summary>
    public double ReadingSeconds(Check check) => Math.Max(0, check.CostSeconds - (LeadMoveSeconds * Math.Min(check.Points.Count, 2)));
}
