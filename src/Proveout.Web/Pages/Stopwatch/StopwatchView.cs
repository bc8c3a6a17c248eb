using System.Globalization;

namespace Proveout.Web.Pages.Stopwatch;

/// <summary>What the stopwatch shows.</summary>
/// <param name="FromMilliseconds">When it was started, since the Unix epoch; null when it was not.</param>
/// <param name="ElapsedMilliseconds">How long it ran, or has run until this page was asked for; null when it was not started.</param>
/// <param name="IsStopped">True when it does not run any more.</param>
public sealed record StopwatchView(long? FromMilliseconds, long? ElapsedMilliseconds, bool IsStopped)
{
    /// <summary>Half a second each way: a hand starts and stops within 0.2 s to 0.3 s of what it sees (common practice), and the page takes a moment.</summary>
    public const double UncertaintySeconds = 0.5;

    public string Elapsed => ElapsedMilliseconds is { } elapsed
        ? FormattableString.Invariant($"{elapsed / 60_000}:{elapsed / 1000 % 60:00}.{elapsed / 100 % 10}")
        : "0:00.0";

    public string Seconds => ((ElapsedMilliseconds ?? 0) / 1000.0).ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>The stopwatch of an address; not started when its times make no sense.</summary>
    public static StopwatchView Of(string? from, string? to, long nowMilliseconds)
    {
        if (MomentOf(from) is not { } start || start > nowMilliseconds)
            return new StopwatchView(null, null, false);
        return MomentOf(to) is { } end && end >= start && end <= nowMilliseconds
            ? new StopwatchView(start, end - start, true)
            : new StopwatchView(start, nowMilliseconds - start, false);
    }

    /// <summary>A moment of an address; null when it is none.</summary>
    public static long? MomentOf(string? text) => long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var moment) ? moment : null;
}
