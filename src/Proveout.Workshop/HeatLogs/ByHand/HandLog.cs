using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>A log of a heater that a person keeps with eye and thermometer, where the controller writes none.</summary>
/// <param name="Body">What is heated, as the machine file names it.</param>
/// <param name="BeganMilliseconds">When the first reading was noted, in milliseconds since 1970 by the bench's clock; null before it.</param>
/// <param name="Rows">The readings, in order.</param>
public sealed record HandLog(string Body, long? BeganMilliseconds, IReadOnlyList<HandLogRow> Rows)
{
    /// <summary>More than a person notes in an afternoon.</summary>
    public const int MostRows = 500;

    private const double LeastCelsius = -10;
    private const double MostCelsius = 500;

    // A warm-up is watched for an hour or two; a page that was left open over night begins anew.
    private const double LongestSeconds = 24 * 3600;

    /// <summary>A log without a reading.</summary>
    public static HandLog Empty(string body) => new(body, null, []);

    /// <summary>The log that a page carries: its beginning, and a line a reading as <see cref="Lines"/> writes it.</summary>
    /// <param name="body">What is heated.</param>
    /// <param name="began">When the first was noted, in milliseconds since 1970; empty before it.</param>
    /// <param name="lines">The lines.</param>
    public static Outcome<HandLog> Read(string body, string began, string lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        string[] written = [.. lines.Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0)];
        if (written.Length == 0)
            return Outcome.Of(Empty(body));
        HandLogRow[] rows = [.. written.Select(RowOf).OfType<HandLogRow>()];
        var isWhole = rows.Length == written.Length && rows.Length <= MostRows && rows.Zip(rows.Skip(1)).All(pair => pair.First.Seconds <= pair.Second.Seconds);
        return isWhole && long.TryParse(began, NumberStyles.None, CultureInfo.InvariantCulture, out var start)
            ? Outcome.Of(new HandLog(body, start, rows))
            : Refused("unreadable-rows", "The readings so far cannot be read.", "Copy them from the text of the log, open the page anew, and give them as a log.");
    }

    /// <summary>The readings as the page carries them from one to the next.</summary>
    public string Lines => string.Join('\n', Rows.Select(row => string.Create(CultureInfo.InvariantCulture, $"{row.Seconds:0.0};{row.Celsius:0.##};{(row.IsFull ? 100 : 0)}")));

    /// <summary>The log as the judging of logs reads it.</summary>
    public string Text => string.Create(CultureInfo.InvariantCulture, $"time [s];{Body} temperature [degC];{Body} output [%]\n{Lines}\n");

    /// <summary>The log with one reading more.</summary>
    /// <param name="shown">What was typed, in degrees Celsius.</param>
    /// <param name="isFull">True when the heater is told to run at full output.</param>
    /// <param name="nowMilliseconds">The moment, in milliseconds since 1970.</param>
    public Outcome<HandLog> With(string shown, bool isFull, long nowMilliseconds)
    {
        ArgumentNullException.ThrowIfNull(shown);
        if (CelsiusOf(shown) is not { } celsius)
            return Refused("unreadable-temperature", $"`{shown.Trim()}` is no temperature between -10 and 500 °C.", "Type what is shown, such as 21.4.");
        if (Rows.Count >= MostRows)
            return Refused("too-many-rows", "This log is full: 500 readings.", "Let it be judged, and begin another.");
        var began = BeganMilliseconds ?? nowMilliseconds;
        var seconds = (nowMilliseconds - began) / 1000.0;
        return seconds > LongestSeconds || (Rows.Count > 0 && seconds < Rows[^1].Seconds)
            ? Refused("other-time", "The bench's clock is a day ahead, or behind, of the first reading.", "Let what was noted be judged, and begin another log.")
            : Outcome.Of(this with { BeganMilliseconds = began, Rows = [.. Rows, new(seconds, celsius, isFull)] });
    }

    /// <summary>The log without its last reading, which was mistyped.</summary>
    public HandLog WithoutLast() => Rows.Count <= 1 ? Empty(Body) : this with { Rows = [.. Rows.SkipLast(1)] };

    private static double? CelsiusOf(string text) =>
        double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var celsius) && celsius is >= LeastCelsius and <= MostCelsius ? celsius : null;

    private static HandLogRow? RowOf(string line) =>
        line.Split(';') is [var time, var shown, "0" or "100"] cells
        && double.TryParse(time, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds)
        && seconds <= LongestSeconds
        && CelsiusOf(shown) is { } celsius
            ? new(seconds, celsius, cells[2] == "100")
            : null;

    private static Outcome<HandLog> Refused(string rule, string message, string mend) =>
        Outcome.Refused<HandLog>([new Diagnostic(rule, new SourcePlace("log", 0, 0), message, mend)]);
}
