using System.Globalization;
using System.Text;

namespace Proveout.Web.Hosting.Watching;

/// <summary>Metrics in the text format of OpenMetrics 1.0 (the specification's section "Text format").</summary>
internal static class OpenMetricsText
{
    public const string ContentType = "application/openmetrics-text; version=1.0.0; charset=utf-8";

    public static string Of(IReadOnlyList<MetricFamily> families)
    {
        var text = new StringBuilder();
        foreach (var family in families.Where(family => family.Series.Any()))
            Write(text, family);
        return text.Append("# EOF\n").ToString();
    }

    /// <summary>A name of letters, digits and underscores.</summary>
    public static string NameOf(string name) => string.Concat(name.Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '_'));

    public static string Escape(string text) => text.Replace("\\", @"\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal).Replace("\n", @"\n", StringComparison.Ordinal);

    private static void Write(StringBuilder text, MetricFamily family)
    {
        var unit = UnitOf(family.Unit);
        var name = FamilyName(family, unit);
        text.Append(CultureInfo.InvariantCulture, $"# TYPE {name} {family.Kind.ToString().ToLowerInvariant()}\n");
        if (unit.Length > 0)
            text.Append(CultureInfo.InvariantCulture, $"# UNIT {name} {unit}\n");
        if (family.Description.Length > 0)
            text.Append(CultureInfo.InvariantCulture, $"# HELP {name} {Escape(family.Description)}\n");
        foreach (var (labels, series) in family.Series)
            Write(text, family, name, labels, series);
    }

    private static void Write(StringBuilder text, MetricFamily family, string name, string labels, MetricSeries series)
    {
        var (value, counts) = series.Read();
        if (family.Kind != MetricKind.Histogram)
        {
            Sample(text, family.Kind == MetricKind.Counter ? $"{name}_total" : name, labels, Number(value));
            return;
        }

        var least = 0L;
        foreach (var (index, count) in counts.Index())
        {
            least += count;
            var bound = index < family.Bounds.Count ? Bound(family.Bounds[index]) : "+Inf";
            Sample(text, $"{name}_bucket", labels.Length == 0 ? $"le=\"{bound}\"" : $"{labels},le=\"{bound}\"", Number(least));
        }

        Sample(text, $"{name}_count", labels, Number(least));
        Sample(text, $"{name}_sum", labels, Number(value));
    }

    private static void Sample(StringBuilder text, string name, string labels, string value) =>
        text.Append(name).Append(labels.Length == 0 ? "" : $"{{{labels}}}").Append(' ').Append(value).Append('\n');

    // A family of counters must not end in the suffix that its samples get.
    private static string FamilyName(MetricFamily family, string unit)
    {
        var name = NameOf(family.Name);
        if (family.Kind == MetricKind.Counter && name.EndsWith("_total", StringComparison.Ordinal))
            name = name[..^"_total".Length];
        return unit.Length == 0 || name.EndsWith($"_{unit}", StringComparison.Ordinal) ? name : $"{name}_{unit}";
    }

    // From the symbols of UCUM, which the instruments have, to whole words.
    private static string UnitOf(string unit) => unit switch
    {
        "s" => "seconds",
        "By" => "bytes",
        _ => "",
    };

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    // A bound is a float and is written as one: "1.0", not "1".
    private static string Bound(double bound) => bound == Math.Floor(bound) && Math.Abs(bound) < 1e15 ? bound.ToString("0.0", CultureInfo.InvariantCulture) : Number(bound);
}
