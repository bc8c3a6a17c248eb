using System.Globalization;

namespace Proveout.Publish.Report;

/// <summary>The words that every writer uses for the same thing.</summary>
internal static class ReportWords
{
    /// <summary>A verdict in words.</summary>
    public static string Of(ReportVerdict verdict) => verdict switch
    {
        ReportVerdict.Pass => "pass",
        ReportVerdict.Fail => "fail",
        ReportVerdict.CannotTell => "cannot tell",
        ReportVerdict.LeftOut => "left out",
        _ => "not done",
    };

    /// <summary>A moment in universal time.</summary>
    public static string Of(DateTimeOffset when) =>
        when.ToUniversalTime().ToString("yyyy-MM-dd HH:mm 'UTC'", CultureInfo.InvariantCulture);

    /// <summary>What became of the checks, in a sentence.</summary>
    public static string Tally(ReportModel report)
    {
        var parts = Enum.GetValues<ReportVerdict>()
            .OrderBy(verdict => verdict == ReportVerdict.NotDone)
            .Where(verdict => report.Count(verdict) > 0)
            .Select(verdict => string.Create(CultureInfo.InvariantCulture, $"{report.Count(verdict)} {Of(verdict)}"));
        return report.Rows.Count == 0
            ? "No checks."
            : string.Create(CultureInfo.InvariantCulture, $"{report.Rows.Count} checks: {string.Join(", ", parts)}.");
    }

    /// <summary>A share in whole per cent, rounded down, so that 100 % means all.</summary>
    public static string Share(int part, int whole) =>
        whole == 0 ? "–" : string.Create(CultureInfo.InvariantCulture, $"{part * 100L / whole} %");

    /// <summary>How many pairs the table leaves out, in a sentence.</summary>
    public static string MorePairs(ReportPairs pairs) => $"{Of(pairs.More)} pairs more hide each other; the check plan lists them.";

    /// <summary>A whole number.</summary>
    public static string Of(long number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The text, or a dash where there is none.</summary>
    public static string OrDash(string text) => text.Length == 0 ? "–" : text;

    /// <summary>The checks, those of one set-up together.</summary>
    public static IEnumerable<(string SetUp, IReadOnlyList<ReportRow> Rows)> BySetUp(ReportModel report)
    {
        var start = 0;
        for (var end = 1; end <= report.Rows.Count; end++)
            if (end == report.Rows.Count || report.Rows[end].SetUp != report.Rows[start].SetUp)
            {
                yield return (report.Rows[start].SetUp, report.Rows.Skip(start).Take(end - start).ToList());
                start = end;
            }
    }
}
