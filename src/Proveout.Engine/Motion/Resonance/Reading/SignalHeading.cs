using System.Text.RegularExpressions;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>A heading of a table of accelerations: what stands below it, and in which unit.</summary>
/// <param name="Name">The heading without its unit.</param>
/// <param name="Unit">The unit as it is written; empty when there is none.</param>
internal readonly partial record struct SignalHeading(string Name, string Unit)
{
    private static readonly string[] TimeNames = ["t", "time", "timestamp", "time stamp", "time_stamp", "elapsed", "elapsed time"];

    /// <summary>True when it heads the time.</summary>
    public bool IsTime => TimeNames.Contains(Name, StringComparer.OrdinalIgnoreCase);

    /// <summary>The direction that it heads: <c>x</c>, <c>y</c> or <c>z</c>; null when it heads none.</summary>
    public string? Direction => AxisName().Match(Name) is { Success: true } match ? match.Groups["axis"].Value.ToLowerInvariant() : null;

    /// <summary>Reads headings such as <c>x [m/s²]</c>, <c>acceleration y (g)</c>, <c>time_ms</c>, <c>t / s</c>.</summary>
    public static SignalHeading Of(string text)
    {
        var name = text.Trim();
        if (name.Length > TableHead.MostSearched)
            return new(name, "");
        var match = Bracketed().Match(name);
        if (!match.Success && Loose().Match(name) is { Success: true } loose && IsUnit(loose.Groups["unit"].Value))
            match = loose;
        return match.Success ? new(match.Groups["name"].Value.Trim(), match.Groups["unit"].Value.Trim()) : new(name, "");
    }

    private static bool IsUnit(string text) => SignalUnits.Acceleration(text) is not null || SignalUnits.Time(text) is not null;

    [GeneratedRegex(@"^(?<name>.+?)\s*(?:\[(?<unit>[^\]]*)\]|\((?<unit>[^)]*)\))$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Bracketed();

    [GeneratedRegex(@"^(?<name>.+?)(?:\s+/\s*|\s+in\s+|_|\s+)(?<unit>[^_\s]+)$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Loose();

    [GeneratedRegex(@"^(?:(?:a|acc|accel|acceleration|axis)[ _.\-]?)?(?<axis>[xyz])(?:[ _.\-]?(?:a|acc|accel|acceleration|axis))?$", RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex AxisName();
}
