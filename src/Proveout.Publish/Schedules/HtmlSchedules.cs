using System.Xml.Linq;
using Proveout.Publish.Report;
using static Proveout.Publish.Report.HtmlElements;

namespace Proveout.Publish.Schedules;

/// <summary>Writes schedules as one web page that needs nothing else; it prints a schedule on a sheet of its own.</summary>
public static class HtmlSchedules
{
    /// <summary>The page. Equal input gives equal output.</summary>
    public static string Write(ScheduleBook book) =>
        HtmlPage.Write($"{book.Machine}: {book.Kind.ToLowerInvariant()}", [Head(book), Cautions(book), Contents(book), .. book.Schedules.Select(SectionOf)]);

    private static XElement Head(ScheduleBook book) => new(
        "header",
        Text("p", book.Kind),
        Text("h1", book.Machine),
        Classed("p", "summary", new XText(PlainText.Clean(book.Summary))),
        Facts(("Fingerprint of the machine file", book.Fingerprint)));

    private static XElement Cautions(ScheduleBook book) => new(
        "section",
        new XAttribute("class", "cautions"), new XAttribute("aria-labelledby", "cautions"),
        new XElement("h2", new XAttribute("id", "cautions"), "Before anything else"),
        List(book.Cautions));

    private static XElement Contents(ScheduleBook book) => new(
        "nav",
        new XAttribute("aria-label", book.Kind),
        new XElement("ul", book.Schedules.Select(schedule => new XElement("li", new XElement("a", new XAttribute("href", $"#{schedule.Id}"), schedule.Title)))));

    private static XElement SectionOf(Schedule schedule) => Section(
        schedule.Id,
        schedule.Title,
        [
            Text("p", schedule.Purpose),
            .. schedule.Cautions.Count == 0 ? Array.Empty<XElement>() : [new XElement("div", new XAttribute("class", "cautions"), List(schedule.Cautions))],
            schedule.Rows.Count == 0
                ? Text("p", "None.")
                : Table(schedule.Total.Length > 0 ? schedule.Total : schedule.Title, [.. schedule.Columns.Select(column => column.Heading)], schedule.Rows.Select(RowOf)),
        ]);

    private static XElement[] RowOf(IReadOnlyList<string> row) =>
    [
        new("th", new XAttribute("scope", "row"), new XText(PlainText.Clean(row[0]))),
        .. row.Skip(1).Select(cell => Text("td", ReportWords.OrDash(cell))),
    ];
}
