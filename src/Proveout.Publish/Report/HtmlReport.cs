namespace Proveout.Publish.Report;

/// <summary>Writes a report as one web page that needs nothing else: no script, no font, no other file.</summary>
public static class HtmlReport
{
    /// <summary>The page; well-formed XML as well as HTML. Equal input gives equal output.</summary>
    public static string Write(ReportModel report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return HtmlPage.Write(
            $"{report.Machine}, {report.Serial}: record of checks",
            [
                HtmlSections.Head(report),
                HtmlSections.Cautions(report),
                HtmlSections.Checks(report),
                HtmlSections.Deviations(report),
                HtmlSections.Coverage(report),
                HtmlSections.NotCovered(report),
                .. HtmlSections.Pairs(report),
                HtmlSections.SignOffs(report),
                HtmlSections.Foot(report),
            ]);
    }
}
