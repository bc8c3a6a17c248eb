using System.Text;
using Proveout.Engine.Machine;

namespace Proveout.Fuzz;

/// <summary>What came of an input in a few words, and what an input is made of.</summary>
internal static class Told
{
    private const int LongestShown = 4000;

    /// <summary>The rules that refused it, each once; or that it was taken.</summary>
    public static string Of<T>(Outcome<T> outcome)
        where T : class => outcome.Value is null ? Of(outcome.Diagnostics) : "taken";

    /// <summary>The rules of diagnostics, each once.</summary>
    /// <exception cref="InvalidOperationException">A diagnostic is not fit to be shown.</exception>
    public static string Of(IReadOnlyList<Diagnostic> problems)
    {
        foreach (var problem in problems)
        {
            if (string.IsNullOrWhiteSpace(problem.Message))
                throw new InvalidOperationException($"A diagnostic says nothing: {problem.Rule}.");
            if (problem.Message.Length > LongestShown)
                throw new InvalidOperationException($"A diagnostic is {problem.Message.Length} characters long: {problem.Rule}.");
        }

        return string.Join(' ', problems.Select(problem => problem.Rule).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }

    /// <summary>Text as files of tables and fields of forms are decoded: what is no UTF-8 becomes the sign for it.</summary>
    public static string Text(byte[] input) => Encoding.UTF8.GetString(input);

    /// <summary>Parts of an input, each behind a line <c>== name</c>; what stands before the first such line has the empty name.</summary>
    public static Dictionary<string, string> Parts(byte[] input)
    {
        var parts = new Dictionary<string, string>(StringComparer.Ordinal) { [""] = "" };
        var name = "";
        var part = new StringBuilder();
        foreach (var line in Text(input).Split('\n'))
        {
            if (!line.StartsWith("== ", StringComparison.Ordinal))
            {
                part.Append(line).Append('\n');
                continue;
            }

            parts[name] = part.ToString();
            (name, part) = (line[3..].Trim(), new StringBuilder());
        }

        parts[name] = part.ToString();
        return parts;
    }

    /// <summary>Fields, <c>name=value</c> each line; of a name that stands twice the last.</summary>
    public static Dictionary<string, string> Fields(string text)
    {
        var fields = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var line in text.Split('\n'))
        {
            if (line.IndexOf('=', StringComparison.Ordinal) is > 0 and var at)
                fields[line[..at]] = line[(at + 1)..];
        }

        return fields;
    }
}
