using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Answers "my fans do not turn": from symptoms, without any reading, to suspects and the check worth most.</summary>
public static class Asking
{
    private const int MostSuspects = 8;

    /// <summary>What the answers say.</summary>
    /// <param name="planned">The machine, with symptoms and live readings.</param>
    /// <param name="answers">Identifier of a symptom, and whether it is not as it should be; others are ignored.</param>
    public static AskView Of(PlannedMachine planned, IReadOnlyDictionary<string, bool> answers)
    {
        var dictionary = planned.Dictionary;
        Reading[] evidence =
        [
            .. from answer in answers
               where dictionary.IndexOfCheck(answer.Key) is { } index && Symptom.Is(dictionary.Checks[index])
               select new Reading(answer.Key, answer.Value ? 0 : 1),
        ];
        var posterior = Diagnosis.Of(dictionary, evidence, planned.Simulators?.Invoke());
        // Other symptoms are on the page already.
        var next = evidence.Length > 0 && SafeNextCheck.Of(planned, posterior, evidence.Select(reading => reading.CheckId), lastRead: null) is { } index
            ? planned.Explained(index)
            : null;
        return new AskView(
            planned.Machine.Summary,
            Groups(dictionary, answers),
            Suspects.Of(planned, posterior, evidence, MostSuspects),
            posterior.IsOff ? posterior.Unknown : 0,
            next,
            next is null ? null : dictionary.SetUps.First(setUp => setUp.Id == next.SetUp));
    }

    private static IReadOnlyList<SymptomGroup> Groups(FaultDictionary dictionary, IReadOnlyDictionary<string, bool> answers) =>
    [
        .. from setUp in dictionary.SetUps
           where setUp.Phase == Phase.InUse
           let symptoms = dictionary.Checks.Where(check => check.SetUp == setUp.Id && Symptom.Is(check)).ToArray()
           where symptoms.Length > 0
           select new SymptomGroup(
               setUp,
               [.. symptoms.Select(check => new SymptomAnswer(check, answers.TryGetValue(check.Id, out var isBad) ? isBad : null))]),
    ];
}
