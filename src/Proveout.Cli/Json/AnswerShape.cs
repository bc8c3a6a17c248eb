using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What symptoms say of a machine.</summary>
internal sealed record AnswerShape(
    string Format, string Machine, IReadOnlyList<SymptomShape> Symptoms, IReadOnlyList<SuspectShape> Suspects, double Unknown, CheckShape? NextCheck)
{
    public static AnswerShape Of(AskView view) => new(
        "proveout-answer 1",
        view.Machine.Name,
        [.. view.Groups.SelectMany(group => group.Symptoms.Select(symptom => new SymptomShape(
            symptom.Check.Id, group.SetUp.Title, symptom.Check.Title, symptom.IsBad is { } bad ? (bad ? "bad" : "good") : null)))],
        [.. view.Suspects.Select(SuspectShape.Of)],
        view.Unknown,
        view.Next is { } next ? CheckShape.Of(next) : null);
}

/// <summary>What a person can see, and what was reported of it.</summary>
internal sealed record SymptomShape(string Id, string SetUp, string Title, string? Reported);
