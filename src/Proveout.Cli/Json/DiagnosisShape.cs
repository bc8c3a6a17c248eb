using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What a set of readings says.</summary>
internal sealed record DiagnosisShape(
    string Format, string Machine, int Readings, IReadOnlyList<FailedReadingShape> Failed, IReadOnlyList<SuspectShape> Suspects, double Unknown, CheckShape? NextCheck)
{
    public static DiagnosisShape Of(string machine, DiagnosisView view) => new(
        "proveout-diagnosis 1",
        machine,
        view.Readings,
        [.. view.Failed.Select(failed => new FailedReadingShape(failed.Check.Id, failed.Shown, failed.Expected))],
        [.. view.Suspects.Select(SuspectShape.Of)],
        view.Unknown,
        view.Next is { } next ? CheckShape.Of(next) : null);
}

/// <summary>A reading that the sound machine cannot show.</summary>
internal sealed record FailedReadingShape(string Check, string Shown, string ExpectedWords);

/// <summary>A mistake, or several together, that would explain every reading; its share among all such, 0 to 1.</summary>
internal sealed record SuspectShape(string Sentence, double Probability, string Severity, string Consequence, IReadOnlyList<string> Why, string? RuledOutBy, IReadOnlyList<string> Faults)
{
    public static SuspectShape Of(Suspect suspect) =>
        new(suspect.Sentence, suspect.Probability, SeverityWords.Of(suspect.Severity), suspect.Consequence, suspect.Why, suspect.RuledOutBy, suspect.FaultIds);
}
