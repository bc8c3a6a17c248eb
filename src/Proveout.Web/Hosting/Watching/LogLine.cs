using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;

namespace Proveout.Web.Hosting.Watching;

/// <summary>What is written of a log entry: never what somebody typed, who it was, or which build it is about.</summary>
/// <param name="Level">How bad it is.</param>
/// <param name="Category">Who says it.</param>
/// <param name="Event">Its name.</param>
/// <param name="Message">The sentence.</param>
/// <param name="Values">The values in it, by name.</param>
/// <param name="Failure">What failed and where, without the texts of exceptions; null when nothing did.</param>
internal sealed record LogLine(
    LogLevel Level, string Category, string Event, string Message, IReadOnlyList<KeyValuePair<string, object?>> Values, string? Failure)
{
    private const string Template = "{OriginalFormat}";

    public static LogLine Of<TState>(in LogEntry<TState> entry)
    {
        var values = entry.State as IReadOnlyList<KeyValuePair<string, object?>> ?? [];
        var failure = entry.Exception is { } exception ? Describe(exception) : null;
        if (entry.Category.StartsWith(Logs.Own, StringComparison.Ordinal))
            return new LogLine(
                entry.LogLevel, entry.Category, entry.EventId.Name ?? "", entry.Formatter(entry.State, null), [.. values.Where(value => value.Key != Template)], failure);
        // What a library puts into its sentence may be an address with a code in it, or a text that was typed: only its fixed words are written.
        var words = values.FirstOrDefault(value => value.Key == Template).Value as string ?? "";
        return new LogLine(entry.LogLevel, entry.Category, entry.EventId.Name ?? "", words, [], failure);
    }

    // The text of an exception may quote what was typed. Its kind and its place tell a programmer enough.
    private static string Describe(Exception exception)
    {
        var lines = new List<string>();
        for (var cause = exception; cause is not null; cause = cause.InnerException)
        {
            lines.Add(cause.GetType().FullName ?? "");
            if (cause.StackTrace is { } stack)
                lines.AddRange(stack.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
        }

        return string.Join('\n', lines);
    }
}
