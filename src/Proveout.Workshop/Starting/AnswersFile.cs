using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Answers to the guided start in a file: a line each, the question's name, a colon, the answer; `#` begins a remark.</summary>
public static class AnswersFile
{
    /// <summary>Answers by the names of the questions, or every line that is none.</summary>
    public static Outcome<IReadOnlyDictionary<string, string>> Read(NamedText file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var answers = new Dictionary<string, string>(StringComparer.Ordinal);
        var problems = new List<Diagnostic>();
        var number = 0;
        foreach (var line in file.Text.Split('\n'))
        {
            number++;
            var words = line.Trim();
            if (words.Length == 0 || words.StartsWith('#'))
                continue;
            var colon = words.IndexOf(':', StringComparison.Ordinal);
            if (colon <= 0)
                problems.Add(new("no-answer", new SourcePlace(file.Name, number, 1), $"`{words}` is no answer.", "Write the name of a question, a colon and the answer, such as `motors: 4`."));
            else if (!answers.TryAdd(words[..colon].Trim(), words[(colon + 1)..].Trim()))
                problems.Add(new("answered-twice", new SourcePlace(file.Name, number, 1), $"`{words[..colon].Trim()}` is answered twice.", "Leave one of the answers."));
        }

        return problems.Count > 0 ? Outcome.Refused<IReadOnlyDictionary<string, string>>(problems) : Outcome.Of<IReadOnlyDictionary<string, string>>(answers);
    }
}
