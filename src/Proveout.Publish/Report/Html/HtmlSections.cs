using System.Xml.Linq;
using static Proveout.Publish.Report.HtmlElements;

namespace Proveout.Publish.Report;

/// <summary>The sections of the report as a page.</summary>
internal static class HtmlSections
{
    private static readonly string[] CheckHeadings = ["No.", "Check", "Expected", "Reading", "Verdict", "By"];

    /// <summary>What the report is about.</summary>
    public static XElement Head(ReportModel report) => new(
        "header",
        Text("p", "Record of checks"),
        Text("h1", report.Machine),
        Classed("p", "summary", new XText(PlainText.Clean(report.Summary))),
        Facts(
            ("Serial number", report.Serial),
            ("Builder", report.Builder),
            ("Build started", ReportWords.Of(report.Started)),
            ("Report written", ReportWords.Of(report.Written)),
            ("Instruments", string.Join("; ", report.Instruments)),
            ("Checks", ReportWords.Tally(report)),
            ("Fingerprint of the machine file", report.Fingerprint)));

    /// <summary>What can hurt, and what the report does not say; before everything that is done.</summary>
    public static XElement Cautions(ReportModel report) => new(
        "section",
        new XAttribute("class", "cautions"), new XAttribute("aria-labelledby", "cautions"),
        new XElement("h2", new XAttribute("id", "cautions"), "Before anything else"),
        report.Cautions.Count == 0 ? null : List(report.Cautions),
        Classed("p", "statement", ReportModel.NotASafetyStatement));

    /// <summary>The checks, a table for each set-up.</summary>
    public static XElement Checks(ReportModel report) => Section(
        "checks",
        "Checks",
        [Text("p", ReportWords.Tally(report)), .. ReportWords.BySetUp(report).Select(group => Classed("div", "of-checks", Table(group.SetUp, CheckHeadings, group.Rows.Select(Row))))]);

    /// <summary>Where the build differs.</summary>
    public static XElement Deviations(ReportModel report) => Section(
        "deviations",
        "Deviations, measurements and photographs",
        report.Deviations.Count == 0 ? [Text("p", "None noted.")] : report.Deviations.Select(Deviation));

    /// <summary>What the checks would have caught.</summary>
    public static XElement Coverage(ReportModel report) => Section(
        "coverage",
        "What the checks would have caught",
        Table(
            "Mistakes simulated, by kind",
            ["Kind of mistake", "Simulated", "Surely caught", "Share"],
            report.Coverage.Select(kind => new[]
            {
                Header(kind.Kind), Number(ReportWords.Of(kind.Faults)), Number(ReportWords.Of(kind.Caught)), Number(ReportWords.Share(kind.Caught, kind.Faults)),
            })));

    /// <summary>What they would not.</summary>
    public static XElement NotCovered(ReportModel report) => Section(
        "not-covered",
        "What these checks cannot tell",
        report.NotCovered.Count == 0
            ? Text("p", "Nothing among the mistakes simulated.")
            : Gaps("Left to other evidence, worst first", report.NotCovered));

    /// <summary>Which mistakes hide each other; nothing where that was not simulated.</summary>
    public static IEnumerable<XElement> Pairs(ReportModel report)
    {
        if (report.Pairs is not { } pairs)
            yield break;
        yield return Section(
            "pairs",
            "Two mistakes made together",
            [
                Text("p", $"With every check of the plan done: {pairs.Summary}"),
                .. pairs.Worst.Count == 0 ? [] : new[] { Gaps("Hidden by each other, most dangerous first", pairs.Worst) },
                .. pairs.More == 0 ? [] : new[] { Text("p", ReportWords.MorePairs(pairs)) },
            ]);
    }

    private static XElement Gaps(string title, IEnumerable<ReportGap> gaps) => Table(
        title,
        ["Mistake", "Count", "What it does", "What else would show it"],
        gaps.Select(gap => new[]
        {
            Header(gap.Sentence), Number(ReportWords.Of(gap.Count)), Text("td", gap.Severity), Text("td", gap.OtherEvidence),
        }));

    /// <summary>Who stands for it.</summary>
    public static XElement SignOffs(ReportModel report) => Section(
        "sign-off",
        "Sign-off",
        [.. report.SignOffs.Select(Signed), Classed("div", "lines", Line("Builder"), Line("Checker"))]);

    /// <summary>How to tell that nothing was changed.</summary>
    public static XElement Foot(ReportModel report) => new(
        "footer",
        Facts(("Entries in the journal", ReportWords.Of(report.EntryCount)), ("Hash of the last entry", report.LastHash)),
        Text("p", ReportModel.NotASafetyStatement));

    private static XElement[] Row(ReportRow row)
    {
        var check = Header(row.Title);
        if (row.Between.Length > 0)
            check.Add(Classed("span", "between", PlainText.Clean(row.Between)));
        if (row.Note.Length > 0)
            check.Add(Classed("span", "note", PlainText.Clean(row.Note)));
        var by = Text("td", ReportWords.OrDash(row.Person));
        if (row.When is { } when)
            by.Add(Classed("span", "note", ReportWords.Of(when)));
        var verdict = new XElement("td", VerdictShape.Of(row.Verdict));
        return [Number(ReportWords.Of(row.Number)), check, Text("td", row.Expectation), Text("td", ReportWords.OrDash(row.Reading)), verdict, by];
    }

    private static XElement Header(string text) => new("th", new XAttribute("scope", "row"), new XText(PlainText.Clean(text)));

    private static XElement Number(string text) => Classed("td", "number", text);

    private static XElement Deviation(ReportDeviation deviation)
    {
        var subject = deviation.Subject.Length == 0 ? "" : $"{deviation.Subject}: ";
        var article = new XElement(
            "article",
            Text("p", subject + deviation.Text),
            Classed("p", "note", PlainText.Clean($"{deviation.Person}, {ReportWords.Of(deviation.When)}")));
        if (deviation.Photo is { } photo)
            article.Add(Picture(photo, subject + deviation.Text));
        if (deviation.PhotoSha256.Length > 0)
            article.Add(Classed("p", "note hash", PlainText.Clean($"SHA-256 of the photograph: {deviation.PhotoSha256}")));
        return article;
    }

    private static XElement Picture(ReadOnlyMemory<byte> photo, string description) =>
        Photograph.MediaType(photo.Span) is { } type
            ? new("img", new XAttribute("alt", PlainText.Clean(description)), new XAttribute("src", $"data:{type};base64,{Convert.ToBase64String(photo.Span)}"))
            : Text("p", "The photograph is neither PNG nor JPEG and is not shown.");

    private static XElement Signed(ReportSignOff signOff) => new(
        "article",
        Text("p", signOff.Statement),
        Classed("p", "note", PlainText.Clean($"{signOff.Person}, {signOff.Role}, {ReportWords.Of(signOff.When)}")));

    private static XElement Line(string role) => Classed("p", "line", $"{role}: name, date, signature");
}
