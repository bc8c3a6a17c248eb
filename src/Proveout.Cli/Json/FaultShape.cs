using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>A mistake, what it does to the network, and which checks then read otherwise.</summary>
internal sealed record FaultShape(
    string Id,
    string Kind,
    string Sentence,
    string Severity,
    double Prior,
    string OtherEvidence,
    IReadOnlyList<ChangeShape> Changes,
    IReadOnlyList<ChangedCheckShape> Checks)
{
    public static FaultShape Of(PlannedMachine planned, int index)
    {
        var wiring = planned.Campaign.Faults[index];
        var response = planned.Dictionary.ResponseOf(index);
        return new FaultShape(
            wiring.Fault.Id,
            wiring.Fault.Kind,
            wiring.Fault.Sentence,
            SeverityWords.Of(wiring.Fault.Severity),
            wiring.Fault.Prior,
            wiring.Fault.OtherEvidence,
            [.. wiring.Changes.Select(ChangeShape.Of)],
            [.. response.Checks.Zip(response.Intervals, ChangedCheckShape.Of)]);
    }
}

/// <summary>What a check, by its index among the candidates, may show under a fault.</summary>
internal sealed record ChangedCheckShape(int Check, double? Low, double? High)
{
    public static ChangedCheckShape Of(int check, Proveout.Engine.Faults.ReadingInterval interval)
    {
        var shown = IntervalShape.Of(interval);
        return new ChangedCheckShape(check, shown.Low, shown.High);
    }
}
