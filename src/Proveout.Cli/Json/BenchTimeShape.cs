using Proveout.Engine.Faults;

namespace Proveout.Cli;

/// <summary>What the checks take in their order, split by what takes it.</summary>
internal sealed record BenchTimeShape(
    double Seconds,
    double LowerBoundSeconds,
    double SetUpSeconds,
    double ReadingSeconds,
    int LeadMoves,
    double LeadMoveSeconds,
    int MeterChanges,
    double MeterChangeSeconds)
{
    public static BenchTimeShape Of(BenchOrder order) => new(
        order.Time.Seconds,
        order.LowerBoundSeconds,
        order.Time.SetUpSeconds,
        order.Time.ReadingSeconds,
        order.Time.LeadMoves,
        order.Time.LeadMoveSeconds,
        order.Time.MeterChanges,
        order.Time.MeterChangeSeconds);
}
