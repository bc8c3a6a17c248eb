using System.Globalization;
using System.Text.RegularExpressions;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Heat;

/// <summary>Tells by its heading what a column of a log holds.</summary>
internal static partial class LogHeadings
{
    private static readonly string[] Times = ["time", "t", "timestamp", "date", "datetime", "clock", "elapsed", "seconds", "second", "sec", "s", "ms", "millis", "milliseconds", "uptime"];
    private static readonly string[] Targets = ["target", "set", "setpoint", "wanted", "goal", "asked"];
    private static readonly string[] Sensors = ["temperature", "temp", "temperatures", "sensor", "shown", "measured", "actual", "celsius", "fahrenheit", "kelvin", "thermistor", "thermometer"];
    private static readonly string[] Outputs = ["output", "out", "power", "duty", "drive", "heater", "heating", "watt", "watts", "on", "pwm", "percent"];

    /// <summary>The column of a heading.</summary>
    /// <param name="index">Its place.</param>
    /// <param name="text">The heading.</param>
    /// <param name="hints">What a person says: a heading named there is what it is named for.</param>
    public static LogColumn Of(int index, string text, LogHints hints)
    {
        var scale = text.Length <= TableHead.MostSearched ? Scale().Match(text) : Match.Empty;
        var head = TableHead.Of(scale.Success ? text.Remove(scale.Index, scale.Length) : text);
        string[] words = [.. Word().Matches(head.Name).Select(match => match.Value.ToLowerInvariant())];
        var kind = ColumnUnit.Find(head.Unit)?.Kind ?? "";
        var role = Is(hints.Sensor) ? LogRole.Sensor : Is(hints.Output) ? LogRole.Output : RoleOf(words, kind);
        return new(index, role, head.Name, string.Join(' ', words.Except([.. Times, .. Targets, .. Sensors, .. Outputs])), head.Unit, FullOf(scale, head.Unit));

        bool Is(string? named) => named is not null && (named.Equals(text.Trim(), StringComparison.OrdinalIgnoreCase) || named.Equals(head.Name, StringComparison.OrdinalIgnoreCase));
    }

    private static LogRole RoleOf(string[] words, string kind) => kind switch
    {
        "time" => LogRole.Time,
        "power" or "share" => LogRole.Output,
        _ when words.Intersect(Targets).Any() => LogRole.Target,
        "temperature" => LogRole.Sensor,
        _ when words.Length > 0 && Times.Contains(words[0]) && !words.Intersect(Sensors).Any() => LogRole.Time,
        _ when words.Intersect(Sensors).Any() => LogRole.Sensor,
        _ when words.Intersect(Outputs).Any() => LogRole.Output,
        _ => LogRole.Other,
    };

    private static double? FullOf(Match scale, string unit) =>
        scale.Success ? double.Parse(scale.Groups["full"].Value, CultureInfo.InvariantCulture) : unit == "%" ? 100 : null;

    // "output [0-255]", "duty (0 to 1)", "output 0..100".
    [GeneratedRegex(@"[\[(]?\s*0\s*(?:-|–|to|\.\.)\s*(?<full>1|100|255)\s*%?\s*[\])]?$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Scale();

    [GeneratedRegex(@"\p{Lu}?\p{Ll}+|\p{Lu}+|\d+", RegexOptions.None, 1000)]
    private static partial Regex Word();
}
