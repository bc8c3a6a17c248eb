using System.Collections.Concurrent;
using System.Diagnostics.Metrics;
using System.Globalization;
using System.Text;

namespace Proveout.Web.Hosting.Watching;

/// <summary>One instrument with all its series.</summary>
/// <param name="instrument">The instrument.</param>
/// <param name="kind">How its values are to be read.</param>
/// <param name="isWhole">True when each value is the whole so far, false when it is to be added.</param>
/// <param name="bounds">Upper bounds of the sizes that a histogram counts by.</param>
internal sealed class MetricFamily(Instrument instrument, MetricKind kind, bool isWhole, IReadOnlyList<double> bounds)
{
    // Our instruments and the framework's have fewer; what a stranger sends cannot grow the memory.
    private const int MostSeries = 400;

    // Seconds from a cached page to a plan of a large machine; for histograms that bring no bounds of their own.
    private static readonly double[] UsualBounds = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10];

    private readonly ConcurrentDictionary<string, MetricSeries> _series = new(StringComparer.Ordinal);

    public string Name => instrument.Name;

    public string Description => instrument.Description ?? "";

    public string Unit => instrument.Unit ?? "";

    public MetricKind Kind => kind;

    public IReadOnlyList<double> Bounds => bounds;

    /// <summary>The series by their labels as text.</summary>
    public IEnumerable<(string Labels, MetricSeries Series)> Series =>
        _series.OrderBy(series => series.Key, StringComparer.Ordinal).Select(series => (series.Key, series.Value));

    public static MetricFamily Of(Instrument instrument)
    {
        var type = instrument.GetType();
        var open = type.IsGenericType ? type.GetGenericTypeDefinition() : type;
        if (open == typeof(Histogram<>))
            return new MetricFamily(instrument, MetricKind.Histogram, isWhole: false, BoundsOf(instrument));
        var isCounter = open == typeof(Counter<>) || open == typeof(ObservableCounter<>);
        return new MetricFamily(instrument, isCounter ? MetricKind.Counter : MetricKind.Gauge, isWhole: instrument.IsObservable || open == typeof(Gauge<>), []);
    }

    public void Take(double value, ReadOnlySpan<KeyValuePair<string, object?>> tags)
    {
        var labels = LabelsOf(tags);
        if (!_series.TryGetValue(labels, out var series))
        {
            if (_series.Count >= MostSeries)
                return;
            series = _series.GetOrAdd(labels, _ => new MetricSeries(bounds));
        }

        if (kind == MetricKind.Histogram)
            series.Count(value);
        else if (isWhole)
            series.Set(value);
        else
            series.Add(value);
    }

    private static IReadOnlyList<double> BoundsOf(Instrument instrument) => instrument switch
    {
        Histogram<double> { Advice.HistogramBucketBoundaries: { } bounds } => bounds,
        _ => UsualBounds,
    };

    private static string LabelsOf(ReadOnlySpan<KeyValuePair<string, object?>> tags)
    {
        if (tags.Length == 0)
            return "";
        var sorted = tags.ToArray();
        Array.Sort(sorted, (one, other) => string.CompareOrdinal(one.Key, other.Key));
        var text = new StringBuilder();
        foreach (var (key, value) in sorted)
            text.Append(text.Length == 0 ? "" : ",").Append(OpenMetricsText.NameOf(key)).Append("=\"").Append(OpenMetricsText.Escape(Convert.ToString(value, CultureInfo.InvariantCulture) ?? "")).Append('"');
        return text.ToString();
    }
}
