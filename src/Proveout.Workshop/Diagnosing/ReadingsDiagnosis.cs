using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Ranks the mistakes that explain a set of readings.</summary>
public static class ReadingsDiagnosis
{
    private const int MostSuspects = 8;

    /// <summary>What the readings say; every one names a check of the machine.</summary>
    public static DiagnosisView Of(PlannedMachine planned, IReadOnlyList<TypedReading> readings)
    {
        var evidence = ReadingsFile.AsEvidence(planned.Dictionary, readings.Select(reading => (reading.CheckId, reading.Text)));
        var hypotheses = Diagnosis.Explain(planned.Dictionary, evidence);
        return new DiagnosisView(
            evidence.Count,
            [.. evidence.Select(reading => FailedOf(planned, reading)).OfType<FailedReading>()],
            Suspects.Of(planned.Dictionary, hypotheses, MostSuspects),
            NextOf(planned, hypotheses, evidence));
    }

    /// <summary>What the readings of a build say.</summary>
    public static DiagnosisView Of(BenchState state) => new(
        state.Steps.Count(step => step.ReadingText.Length > 0),
        [.. state.Steps.Where(step => step.Status == StepStatus.Failed).Select(step => new FailedReading(step.Check, step.ReadingShown, step.Expected))],
        state.Suspects,
        state.NextBestCheckId is { } next ? state.FindStep(next)?.Check : null);

    private static FailedReading? FailedOf(PlannedMachine planned, Reading reading)
    {
        var check = planned.FindCheck(reading.CheckId)!;
        return check.Judge(reading.Value) == Verdict.Fail
            ? new FailedReading(check, CheckWords.Shown(check, reading.Value), CheckWords.Expected(check))
            : null;
    }

    private static Check? NextOf(PlannedMachine planned, IReadOnlyList<Hypothesis> hypotheses, IReadOnlyList<Reading> evidence)
    {
        if (hypotheses.Count == 0)
            return null;
        var setUp = planned.FindCheck(evidence[^1].CheckId)!.SetUp;
        return NextCheck.Of(planned.Dictionary, hypotheses, evidence.Select(reading => reading.CheckId).ToHashSet(), setUp) is { } check
            ? planned.Explained(check)
            : null;
    }
}
