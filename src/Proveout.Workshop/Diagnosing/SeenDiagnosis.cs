using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Answers "my axis binds": from what is seen, and from readings of hand checks, to suspects and the check worth most.</summary>
internal static class SeenDiagnosis
{
    private const int MostSuspects = 6;

    /// <summary>What the answers say.</summary>
    /// <param name="dictionary">What every check shows under every mistake.</param>
    /// <param name="simulator">Simulates several mistakes at once; null when nothing can.</param>
    /// <param name="questions">What can be seen.</param>
    /// <param name="answers">Number of the outcome seen, or a reading, by the identifier of the check; others are ignored.</param>
    public static SeenView Of(FaultDictionary dictionary, IFaultSimulator? simulator, IReadOnlyList<SeenQuestion> questions, IReadOnlyDictionary<string, double> answers)
    {
        Reading[] evidence =
        [
            .. from answer in answers
               where dictionary.IndexOfCheck(answer.Key) is not null && IsPossible(questions, answer.Key, answer.Value)
               orderby answer.Key
               select new Reading(answer.Key, answer.Value),
        ];
        var posterior = Diagnosis.Of(dictionary, evidence, simulator);
        var phases = dictionary.SetUps.ToDictionary(setUp => setUp.Id, setUp => (int)setUp.Phase, StringComparer.Ordinal);
        var next = evidence.Length > 0 && NextCheck.InPhases(dictionary, posterior, evidence.Select(reading => reading.CheckId).ToHashSet(StringComparer.Ordinal), BenchPosition.Start, check => phases[check.SetUp]) is { } worth
            ? dictionary.Checks[worth.Check]
            : null;
        return new SeenView(
            [.. questions.Select(question => new SeenAnswer(question, answers.TryGetValue(question.CheckId, out var chosen) ? chosen : null))],
            [.. evidence.Select(reading => InWords(dictionary, questions, reading))],
            Suspects.Of(dictionary, simulator, posterior, evidence, MostSuspects),
            posterior.IsOff ? posterior.Unknown : 0,
            next,
            next is null ? null : dictionary.SetUps.First(setUp => setUp.Id == next.SetUp))
        {
            Readings = evidence.Where(reading => questions.All(question => question.CheckId != reading.CheckId)).ToDictionary(reading => reading.CheckId, reading => reading.Value, StringComparer.Ordinal),
        };
    }

    /// <summary>The outcome that a person's words mean: all of them, or words that only one outcome has.</summary>
    public static Outcome<SeenChoice> Find(IReadOnlyList<SeenQuestion> questions, string words)
    {
        var all = (from question in questions from outcome in question.Outcomes select (question.CheckId, outcome.Value, outcome.Words)).ToArray();
        var wanted = words.Trim();
        var found = all.Where(each => each.Words.Equals(wanted, StringComparison.OrdinalIgnoreCase)).ToArray();
        if (found.Length == 0)
            found = [.. all.Where(each => wanted.Split(' ', StringSplitOptions.RemoveEmptyEntries) is { Length: > 0 } parts
                && parts.All(part => each.Words.Split(' ', ',').Contains(part, StringComparer.OrdinalIgnoreCase)))];
        return found.Length == 1
            ? Outcome.Of(new SeenChoice(found[0].CheckId, found[0].Value))
            : Outcome.Refused<SeenChoice>(
            [
                new Diagnostic(
                    found.Length == 0 ? "unknown-sight" : "unclear-sight",
                    new SourcePlace("--sees", 0, 0),
                    found.Length == 0 ? $"`{wanted}` is nothing that can be told from." : $"`{wanted}` can mean {string.Join(" or ", found.Select(each => $"`{each.Words}`"))}.",
                    $"Say one of: {string.Join("; ", (found.Length == 0 ? all : found).Select(each => each.Words))}."),
            ]);
    }

    private static bool IsPossible(IReadOnlyList<SeenQuestion> questions, string id, double value) =>
        questions.FirstOrDefault(question => question.CheckId == id) is not { } question || question.Outcomes.Any(outcome => outcome.Value == value);

    private static string InWords(FaultDictionary dictionary, IReadOnlyList<SeenQuestion> questions, Reading reading)
    {
        if (questions.FirstOrDefault(question => question.CheckId == reading.CheckId) is { } question)
            return question.Outcomes.First(outcome => outcome.Value == reading.Value).Words;
        var check = dictionary.Checks[dictionary.IndexOfCheck(reading.CheckId)!.Value];
        return string.Create(CultureInfo.InvariantCulture, $"{check.Title}: {reading.Value:0.###} {check.Unit} (sound: {CheckWords.Expected(check)})");
    }
}

/// <summary>An outcome that was seen.</summary>
/// <param name="CheckId">Of which symptom.</param>
/// <param name="Value">Its number.</param>
public sealed record SeenChoice(string CheckId, double Value);
