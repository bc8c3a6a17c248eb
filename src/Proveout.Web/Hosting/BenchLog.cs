using Microsoft.Extensions.Logging.Console;

namespace Proveout.Web.Hosting;

/// <summary>How lines of the log look: one an event, with the time in universal time, so that what happened can be told in order.</summary>
internal static class BenchLog
{
    public static void Form(SimpleConsoleFormatterOptions lines) => (lines.SingleLine, lines.UseUtcTimestamp, lines.TimestampFormat) = (true, true, "yyyy-MM-dd'T'HH:mm:ss'Z' ");
}
