using YamlDotNet.Core;

namespace Proveout.Engine.Machine;

/// <summary>Says where text is not YAML, and shows the line.</summary>
internal static class SyntaxProblem
{
    public const string Rule = "yaml-syntax";
    public const string Mend = "Look at this line and the one above: indentation by spaces, quotes, colons, brackets.";

    public static void Report(SourceText source, YamlException syntax, Problems problems)
    {
        var start = (int)Math.Max(syntax.Start.Line, 1);
        var lines = source.Text.EnumerateLines();
        for (var number = 1; lines.MoveNext(); number++)
        {
            // The parser blames the line before an indentation by tabs.
            if (number >= start && number <= syntax.End.Line + 1 && IsIndentedByTab(lines.Current))
            {
                problems.Add(
                    Rule,
                    new(source.File, number, 1),
                    $"{Quote.Of(lines.Current.Trim().ToString())} is indented by a tab, which YAML does not allow.",
                    "Indent it by spaces.");
                return;
            }
        }

        var column = (int)Math.Max(syntax.Start.Column, 1);
        problems.Add(
            Rule,
            new(source.File, start, column),
            $"This is not valid YAML: {OneSentence(syntax.Message)}, at {Shown(source.Text, start)}.",
            Mend);
    }

    // The parser puts two spaces between its halves.
    private static string OneSentence(string message) => string.Join(' ', message.Split(' ', StringSplitOptions.RemoveEmptyEntries)).TrimEnd('.');

    private static bool IsIndentedByTab(ReadOnlySpan<char> line) => line.TrimStart(' ') is ['\t', ..] && !line.Trim().IsEmpty;

    private static string Shown(string text, int wanted)
    {
        var lines = text.EnumerateLines();
        for (var number = 1; lines.MoveNext(); number++)
            if (number == wanted && !lines.Current.Trim().IsEmpty)
                return Quote.Of(lines.Current.Trim().ToString());
        return "the end of the file";
    }
}
