using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Console;
using Proveout.Web.Access;

namespace Proveout.Web.Hosting.Watching;

/// <summary>Sends the log to the error stream, so that the output stays what was asked for.</summary>
internal static class Logs
{
    /// <summary>Start of the categories of our own messages.</summary>
    public const string Own = "Proveout";

    public static void Add(ILoggingBuilder logging, LogShape shape)
    {
        logging.Services.AddSingleton(TimeProvider.System);
        logging.AddConsole(console =>
        {
            console.FormatterName = shape == LogShape.Json ? JsonLines.FormatterName : PlainLines.FormatterName;
            console.LogToStandardErrorThreshold = LogLevel.Trace;
        });
        logging.AddConsoleFormatter<PlainLines, ConsoleFormatterOptions>();
        logging.AddConsoleFormatter<JsonLines, ConsoleFormatterOptions>();
        logging.SetMinimumLevel(shape == LogShape.OnlyTrouble ? LogLevel.Error : LogLevel.Warning);
        if (shape != LogShape.OnlyTrouble)
            logging.AddFilter(Own, LogLevel.Information);
        // Who came in and who was refused is told also where nothing else is.
        logging.AddFilter(AccessNews.Category, LogLevel.Information);
        // A form from before a restart is told to its sender; it is no trouble of the bench.
        logging.AddFilter("Microsoft.AspNetCore.Antiforgery", LogLevel.None);
        // That shared keys lie in the database as they are is said in docs/methods/workshop.md, not at each start.
        logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
    }
}
