using System.Globalization;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Logging.Console;

namespace Proveout.Web.Hosting.Watching;

/// <summary>The log in lines for a person: when, how bad, what; then where it failed, indented.</summary>
/// <param name="clock">Tells the time.</param>
internal sealed class PlainLines(TimeProvider clock) : ConsoleFormatter(FormatterName)
{
    public const string FormatterName = "proveout-plain";

    public override void Write<TState>(in LogEntry<TState> logEntry, IExternalScopeProvider? scopeProvider, TextWriter textWriter)
    {
        var line = LogLine.Of(logEntry);
        textWriter.Write(string.Create(CultureInfo.InvariantCulture, $"{clock.GetUtcNow():yyyy-MM-dd'T'HH:mm:ss.fff'Z'} {Word(line.Level)} {OneLine(line.Message)}\n"));
        foreach (var place in line.Failure?.Split('\n') ?? [])
            textWriter.Write($"    {place}\n");
    }

    /// <summary>How bad it is, in a word.</summary>
    public static string Word(LogLevel level) => level switch
    {
        LogLevel.Critical or LogLevel.Error => "error",
        LogLevel.Warning => "warning",
        _ => "information",
    };

    // One entry, one line: nothing that gets into a sentence can pass for an entry of its own.
    private static string OneLine(string text) => text.ReplaceLineEndings(" ");
}
