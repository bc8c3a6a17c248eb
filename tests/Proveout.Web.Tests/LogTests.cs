using System.Text.Json;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Logging.Console;
using Proveout.Web.Hosting.Watching;

namespace Proveout.Web.Tests;

public sealed class LogTests
{
    private const string Secret = "code=4711";

    [Fact]
    public void Our_own_message_is_written_with_its_values()
    {
        using var line = JsonDocument.Parse(Write(new JsonLines(new Noon()), "Proveout.Requests", null, "{Method} {Status}", ("Method", "GET"), ("Status", 200)));

        Assert.Equal("2026-11-28T12:00:00.000Z", line.RootElement.GetProperty("time").GetString());
        Assert.Equal("warning", line.RootElement.GetProperty("level").GetString());
        Assert.Equal("GET 200", line.RootElement.GetProperty("message").GetString());
        Assert.Equal(200, line.RootElement.GetProperty("status").GetInt32());
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_a_library_quotes_and_what_an_exception_says_is_not_written(bool asJson)
    {
        ConsoleFormatter formatter = asJson ? new JsonLines(new Noon()) : new PlainLines(new Noon());

        var text = Write(formatter, "Library.Server", Failure(), "The address {Address} failed.", ("Address", Secret));

        Assert.DoesNotContain(Secret, text, StringComparison.Ordinal);
        Assert.Contains("The address {Address} failed.", text, StringComparison.Ordinal);
        Assert.Contains("System.InvalidOperationException", text, StringComparison.Ordinal);
        Assert.Contains("System.FormatException", text, StringComparison.Ordinal);
        Assert.Contains($"{nameof(LogTests)}.{nameof(Failure)}", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_message_with_a_line_break_cannot_pass_for_two()
    {
        var text = Write(new PlainLines(new Noon()), "Proveout.Requests", null, "{Method}", ("Method", "GET\n2026-11-28T12:00:00.000Z error All is lost"));

        Assert.Single(text.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void Each_entry_is_one_line_of_JSON()
    {
        var text = Write(new JsonLines(new Noon()), "Library.Server", Failure(), "It\nfailed.");

        Assert.Equal(1, text.Count(letter => letter == '\n'));
        using var line = JsonDocument.Parse(text);
        Assert.Contains("\n", line.RootElement.GetProperty("failure").GetString(), StringComparison.Ordinal);
    }

    private static string Write(ConsoleFormatter formatter, string category, Exception? exception, string template, params (string Name, object? Value)[] values)
    {
        KeyValuePair<string, object?>[] state = [.. values.Select(value => KeyValuePair.Create(value.Name, value.Value)), new("{OriginalFormat}", template)];
        using var writer = new StringWriter();
        formatter.Write(
            new LogEntry<IReadOnlyList<KeyValuePair<string, object?>>>(LogLevel.Warning, category, new EventId(1, "Tried"), state, exception, (_, _) => string.Join(' ', values.Select(value => value.Value))),
            null,
            writer);
        return writer.ToString();
    }

    private static InvalidOperationException Failure()
    {
        try
        {
            throw new InvalidOperationException(Secret, new FormatException(Secret));
        }
        catch (InvalidOperationException exception)
        {
            return exception;
        }
    }

    private sealed class Noon : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => new(2026, 11, 28, 12, 0, 0, TimeSpan.Zero);
    }
}
