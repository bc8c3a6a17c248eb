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
        var posterior = Diagnosis.Of(planned.Dictionary, evidence, planned.Simulators?.Invoke());
        return new DiagnosisView(
            evidence.Count,
            [.. evidence.Select(reading => FailedOf(planned, reading)).OfType<FailedReading>()],
            Suspects.Of(planned, posterior, evidence, MostSuspects),
            NextOf(planned, posterior, evidence))
        {
            Unknown = posterior.Unknown,
        };
    }

    /// <summary>What the readings of a build say.</summary>
    public static DiagnosisView Of(BenchState state) => new(
        state.Steps.Count(step => step.ReadingText.Length > 0),
        [.. state.Steps.Where(step => step.Status == StepStatus.Failed).Select(step => new FailedReading(step.Check, step.ReadingShown, step.Expected))],
        state.Suspects,
        state.NextBestCheckId is { } next ? state.FindStep(next)?.Check : null)
    {
        Unknown = state.UnknownMistake,
    };

    private static FailedReading? FailedOf(PlannedMachine planned, Reading reading)
    {
        var check = planned.FindCheck(reading.CheckId)!;
        return check.Judge(reading.Value) == Verdict.Fail
            ? new FailedReading(check, CheckWords.Shown(check, reading.Value), CheckWords.Expected(check))
            : null;
    }

    private static Check? NextOf(PlannedMachine planned, Posterior posterior, IReadOnlyList<Reading> evidence) =>
        posterior.IsOff && SafeNextCheck.Of(planned, posterior, evidence.Select(reading => reading.CheckId), evidence[^1].CheckId) is { } next
            ? planned.Explained(next)
            : null;
}
