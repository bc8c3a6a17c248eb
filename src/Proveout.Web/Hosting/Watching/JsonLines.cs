using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Logging.Console;

namespace Proveout.Web.Hosting.Watching;

/// <summary>The log as one JSON object a line: `proveout-log 1` of docs/json.md.</summary>
/// <param name="clock">Tells the time.</param>
internal sealed class JsonLines(TimeProvider clock) : ConsoleFormatter(FormatterName)
{
    public const string FormatterName = "proveout-json";

    public override void Write<TState>(in LogEntry<TState> logEntry, IExternalScopeProvider? scopeProvider, TextWriter textWriter)
    {
        var line = LogLine.Of(logEntry);
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes))
            Write(json, line);
        textWriter.Write(Encoding.UTF8.GetString(bytes.WrittenSpan));
        textWriter.Write('\n');
    }

    private void Write(Utf8JsonWriter json, LogLine line)
    {
        json.WriteStartObject();
        json.WriteString("time", clock.GetUtcNow().ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture));
        json.WriteString("level", PlainLines.Word(line.Level));
        json.WriteString("category", line.Category);
        json.WriteString("event", line.Event);
        json.WriteString("message", line.Message);
        foreach (var (name, value) in line.Values)
            Write(json, JsonNamingPolicy.CamelCase.ConvertName(name), value);
        if (line.Failure is { } failure)
            json.WriteString("failure", failure);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, object? value)
    {
        switch (value)
        {
            case int number:
                json.WriteNumber(name, number);
                break;
            case double number:
                json.WriteNumber(name, number);
                break;
            default:
                json.WriteString(name, value?.ToString());
                break;
        }
    }
}
