namespace Proveout.Engine.Faults;

/// <summary>What an ordered list of checks takes, split by what takes it.</summary>
/// <param name="SetUpSeconds">Getting to the set-ups.</param>
/// <param name="ReadingSeconds">Reading, leads in place.</param>
/// <param name="LeadMoves">How many times a lead goes to another place.</param>
/// <param name="LeadMoveSeconds">What that takes.</param>
/// <param name="MeterChanges">How many times the meter is set to another kind of measurement.</param>
/// <param name="MeterChangeSeconds">What that takes.</param>
public sealed record BenchTime(
    double SetUpSeconds, double ReadingSeconds, int LeadMoves, double LeadMoveSeconds, int MeterChanges, double MeterChangeSeconds)
{
    /// <summary>All of it.</summary>
    public double Seconds => SetUpSeconds + ReadingSeconds + LeadMoveSeconds + MeterChangeSeconds;

    /// <summary>Adds up some steps.</summary>
    internal static BenchTime Of(FaultDictionary dictionary, IReadOnlyList<OrderStep> steps, BenchCosts costs)
    {
        var setUps = dictionary.SetUps.ToDictionary(setUp => setUp.Id, setUp => setUp.CostSeconds, StringComparer.Ordinal);
        var moves = steps.Sum(step => step.LeadMoves);
        var changes = steps.Count(step => step.ChangesMeter);
        return new BenchTime(
            steps.Where(step => step.ChangesSetUp).Sum(step => setUps[dictionary.Checks[step.Check].SetUp]),
            steps.Sum(step => costs.ReadingSeconds(dictionary.Checks[step.Check])),
            moves,
            moves * costs.LeadMoveSeconds,
            changes,
            changes * costs.MeterChangeSeconds);
    }
}
