using System.Globalization;
using System.Xml.Linq;
using Proveout.Publish.Drawings;
using Proveout.Publish.Report;

namespace Proveout.Publish.Schedules;

/// <summary>Writes labels as one web page: each sheet of A4 is a drawing to scale.</summary>
public static class HtmlLabels
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>The page. Equal input gives equal output.</summary>
    public static string Write(ScheduleBook book) => HtmlPage.Write(
        $"{book.Machine}: labels",
        [
            new XElement(
                "header",
                HtmlElements.Text("h1", $"{book.Machine}: labels"),
                HtmlElements.Text("p", "Two for each wire, one for each end. Print at full size: no scaling to fit.")),
            .. LabelSheet.Sheets(book.Labels).Select((labels, at) => SheetOf(labels, at + 1)),
        ]);

    private static XElement SheetOf(WireLabel[] labels, int number) => new(
        Svg + "svg",
        new XAttribute("viewBox", "0 0 210 297"), new XAttribute("width", "210mm"), new XAttribute("height", "297mm"),
        new XAttribute("role", "img"), new XAttribute("style", "display:block;max-width:100%;height:auto;background:#fff"),
        new XAttribute("aria-label", string.Create(CultureInfo.InvariantCulture, $"Sheet {number}: labels of {string.Join(", ", labels.Select(label => label.Conductor).Distinct())}")),
        labels.Select(LabelOf));

    private static XElement LabelOf(WireLabel label, int number)
    {
        var (left, top) = LabelSheet.CornerOf(number);
        return new(
            Svg + "g",
            new XAttribute("transform", string.Create(CultureInfo.InvariantCulture, $"translate({left:0.##} {top:0.##})")),
            new XAttribute("font-family", "system-ui, sans-serif"), new XAttribute("fill", "#000"),
            new XElement(
                Svg + "rect",
                Number("width", LabelSheet.WidthMm), Number("height", LabelSheet.HeightMm), new XAttribute("fill", "none"), new XAttribute("stroke", "#bbb"), Number("stroke-width", 0.1)),
            new XElement(Svg + "path", new XAttribute("d", CodePath(label.Code))),
            Line(label.Conductor, 5, 4.2, "bold"),
            Line(label.Here, 8.6, 3.1, "bold"),
            Line($"to {label.There}", 12, 2.5, "normal"),
            Line(label.Wire, 15.2, 2.5, "normal"));
    }

    private static XElement Line(string text, double baseMm, double sizeMm, string weight) => new(
        Svg + "text",
        Number("x", LabelSheet.CodeMm + 2.5), Number("y", baseMm), Number("font-size", sizeMm), new XAttribute("font-weight", weight),
        new XText(TextFit.Fit(PlainText.Clean(text), LabelSheet.WidthMm - LabelSheet.CodeMm - 3.5, sizeMm, weight == "bold")));

    private static string CodePath(string text)
    {
        var modules = SquareCode.Of(text);
        var size = LabelSheet.CodeMm / modules.Length;
        return string.Concat(modules.Index().SelectMany(row => PdfLabels.Runs(row.Item).Select(run => string.Create(
            CultureInfo.InvariantCulture,
            $"M{1 + (run.First * size):0.###} {1 + (row.Index * size):0.###}h{run.Length * size:0.###}v{size:0.###}h{-run.Length * size:0.###}z"))));
    }

    private static XAttribute Number(string name, double value) => new(name, value.ToString("0.###", CultureInfo.InvariantCulture));
}
