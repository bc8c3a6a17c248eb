using System.Reflection;
using System.Xml.Linq;

namespace Proveout.Publish.Report;

/// <summary>Writes a report as one web page that needs nothing else: no script, no font, no other file.</summary>
public static class HtmlReport
{
    /// <summary>The page; well-formed XML as well as HTML. Equal input gives equal output.</summary>
    public static string Write(ReportModel report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var page = new XElement("html", new XAttribute("lang", "en"), Head(report), Body(report));
        return $"<!DOCTYPE html>\n{page.ToString(SaveOptions.DisableFormatting)}\n";
    }

    private static XElement Head(ReportModel report) => new(
        "head",
        new XElement("meta", new XAttribute("charset", "utf-8")),
        new XElement("meta", new XAttribute("name", "viewport"), new XAttribute("content", "width=device-width, initial-scale=1")),
        HtmlElements.Text("title", $"{report.Machine}, {report.Serial}: record of checks"),
        new XElement("style", Style()));

    private static XElement Body(ReportModel report) => new(
        "body",
        new XElement(
            "main",
            HtmlSections.Head(report),
            HtmlSections.Cautions(report),
            HtmlSections.Checks(report),
            HtmlSections.Deviations(report),
            HtmlSections.Coverage(report),
            HtmlSections.NotCovered(report),
            report.Pairs is { } pairs ? HtmlSections.Pairs(pairs) : null,
            HtmlSections.SignOffs(report),
            HtmlSections.Foot(report)));

    /// <summary>The style sheet; it holds none of the characters that XML would have to escape.</summary>
    private static string Style()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("report.css")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
