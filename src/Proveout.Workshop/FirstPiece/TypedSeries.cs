using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Reads several figures out of one field: blanks, semicolons, or commas with a blank behind them stand between.</summary>
internal static class TypedSeries
{
    private const int Most = 200;

    /// <summary>The figures; empty when nothing was typed or when something of it cannot be used.</summary>
    public static IReadOnlyList<double> Read(IReadOnlyDictionary<string, string> texts, FigureField field, List<Diagnostic> problems)
    {
        string[] words = [.. texts.GetValueOrDefault(field.Name, "").Split([' ', '\t', '\n', '\r', ';'], StringSplitOptions.RemoveEmptyEntries).Select(word => word.TrimEnd(',')).Where(word => word.Length > 0 && word != field.Unit)];
        if (words.Length > Most)
        {
            problems.Add(new("too-many-readings", new SourcePlace(field.Label, 0, 0), $"There are more than {Most} readings.", "Give the first ones."));
            return [];
        }

        List<double> values = [];
        foreach (var word in words)
        {
            TypedFigures typed = new(new Dictionary<string, string> { [field.Name] = word });
            if (typed.Read(field) is { } value)
                values.Add(value);
            problems.AddRange(typed.Problems.Except(problems));
        }

        return values.Count == words.Length ? values : [];
    }
}
