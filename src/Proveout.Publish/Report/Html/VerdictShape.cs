using System.Xml.Linq;

namespace Proveout.Publish.Report;

/// <summary>A verdict as shape and word, so that colour is not needed to tell it.</summary>
internal static class VerdictShape
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>The shape, then the word.</summary>
    public static XElement Of(ReportVerdict verdict)
    {
        var shape = new XElement(
            Svg + "svg",
            new XAttribute("viewBox", "0 0 16 16"), new XAttribute("width", "16"), new XAttribute("height", "16"), new XAttribute("aria-hidden", "true"),
            Paths(verdict).Select(path => new XElement(Svg + "path", new XAttribute("d", path))));
        var name = ReportWords.Of(verdict);
        return HtmlElements.Classed("span", $"verdict {name.Replace(' ', '-')}", shape, new XElement("span", name));
    }

    private static string[] Paths(ReportVerdict verdict) => verdict switch
    {
        ReportVerdict.Pass => ["M15 8a7 7 0 1 1-14 0a7 7 0 1 1 14 0z", "M4.8 8.3l2.3 2.3l4.3-4.8"],
        ReportVerdict.Fail => ["M1.5 1.5h13v13h-13z", "M5 5l6 6M11 5l-6 6"],
        ReportVerdict.CannotTell => ["M8 0.8l7.2 7.2l-7.2 7.2l-7.2-7.2z", "M6.2 6.6a1.8 1.8 0 1 1 2.6 1.6q-0.8 0.4-0.8 1.2M8 11v0.3"],
        ReportVerdict.LeftOut => ["M15 8a7 7 0 1 1-14 0a7 7 0 1 1 14 0z", "M4.5 8h7"],
        _ => ["M15 8a7 7 0 1 1-14 0a7 7 0 1 1 14 0z"],
    };
}
