namespace Proveout.Web.Hosting.Watching;

/// <summary>How the values of a metric are to be read: OpenMetrics 1.0, metric types.</summary>
internal enum MetricKind
{
    /// <summary>Only grows.</summary>
    Counter,

    /// <summary>Is what it is now.</summary>
    Gauge,

    /// <summary>How many were at most so large, for several sizes.</summary>
    Histogram,
}
