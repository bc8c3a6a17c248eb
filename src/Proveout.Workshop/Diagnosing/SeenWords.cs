using System.Globalization;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Reads what a person says was seen or read.</summary>
internal static class SeenWords
{
    /// <summary>Answers by the identifier of the check, or everything that cannot be understood.</summary>
    public static Outcome<IReadOnlyDictionary<string, double>> Read(FaultDictionary dictionary, IReadOnlyList<SeenQuestion> questions, IEnumerable<string> seen, IEnumerable<string> read)
    {
        Dictionary<string, double> answers = new(StringComparer.Ordinal);
        List<Diagnostic> problems = [];
        string[] said = [.. seen, .. read];
        if (dictionary.Checks.Count == 0 && said.Length > 0)
            return Outcome.Refused<IReadOnlyDictionary<string, double>>([new Diagnostic("nothing-to-tell-from", new SourcePlace("--sees", 0, 0), "No mistake is imagined while a path cannot be.", "Mend what the rules find first; the command without --sees says it.")]);
        foreach (var words in seen)
        {
            var found = SeenDiagnosis.Find(questions, words);
            problems.AddRange(found.Diagnostics);
            if (found.Value is { } choice && !answers.TryAdd(choice.CheckId, choice.Value) && answers[choice.CheckId] != choice.Value)
                problems.Add(new Diagnostic("contradicting-sights", new SourcePlace("--sees", 0, 0), $"`{words}` contradicts what was said before.", "Say only one of the two."));
        }

        foreach (var words in read)
            ReadOne(dictionary, words, answers, problems);
        return problems.Count > 0 ? Outcome.Refused<IReadOnlyDictionary<string, double>>(problems) : Outcome.Of<IReadOnlyDictionary<string, double>>(answers);
    }

    private static void ReadOne(FaultDictionary dictionary, string words, Dictionary<string, double> answers, List<Diagnostic> problems)
    {
        var cut = words.LastIndexOf('=');
        if (cut > 0 && dictionary.IndexOfCheck(words[..cut].Trim()) is { } index
            && double.TryParse(words[(cut + 1)..].Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value)
            && double.IsFinite(value))
            answers[dictionary.Checks[index].Id] = value;
        else
            problems.Add(new Diagnostic(
                "unclear-reading", new SourcePlace("--reads", 0, 0), $"`{words}` is no reading of a check.",
                $"Write a check and its reading, such as `{dictionary.Checks.First(check => !Symptom.Is(check)).Id}=1.5`. The checks are {string.Join(", ", dictionary.Checks.Where(check => !Symptom.Is(check)).Select(check => check.Id))}."));
    }
}
