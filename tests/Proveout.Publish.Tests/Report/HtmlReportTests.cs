using System.Xml;
using System.Xml.Linq;
using FsCheck;
using FsCheck.Fluent;
using Proveout.Publish.Report;

namespace Proveout.Publish.Tests.Report;

public class HtmlReportTests
{
    [Fact]
    public void The_page_looks_as_it_did() => Snapshot.Match("small-oven.html", Read(SampleReport.Small));

    [Fact]
    public void Every_row_is_there_with_all_it_says()
    {
        var rows = Read(SampleReport.Small).Descendants("tr").Select(row => row.Value).ToList();
        foreach (var row in SampleReport.Small.Rows)
            Assert.Contains(rows, text => new[] { row.Title, row.Between, row.Expectation, row.Reading, row.Note, row.Person }
                .All(part => text.Contains(part, StringComparison.Ordinal)));
    }

    [Fact]
    public void Cautions_and_what_the_record_does_not_say_stand_before_the_checks()
    {
        var text = Read(SampleReport.Small).Element("body")!.Value;
        var checks = text.IndexOf("Protective conductor to the frame", StringComparison.Ordinal);
        Assert.All(
            SampleReport.Small.Cautions.Append(ReportModel.NotASafetyStatement),
            sentence => Assert.InRange(text.IndexOf(sentence, StringComparison.Ordinal), 0, checks));
    }

    [Fact]
    public void A_verdict_is_a_word_and_a_shape()
    {
        var verdicts = Read(SampleReport.Small).Descendants("span").Where(span => ((string?)span.Attribute("class"))?.StartsWith("verdict", StringComparison.Ordinal) == true).ToList();
        Assert.Equal(["pass", "fail", "left out", "cannot tell", "not done"], verdicts.Select(verdict => verdict.Value));
        Assert.Equal(5, verdicts.Select(verdict => string.Concat(verdict.Descendants().Attributes("d").Select(path => path.Value))).Distinct().Count());
    }

    [Fact]
    public void The_page_needs_no_other_file_and_no_script()
    {
        var page = Read(SampleReport.Small);
        Assert.DoesNotContain(page.Descendants(), element => element.Name.LocalName is "script" or "link" or "iframe");
        Assert.All(page.Descendants().Attributes("src"), source => Assert.StartsWith("data:image/png;base64,", source.Value, StringComparison.Ordinal));
        Assert.DoesNotContain("url(", page.Descendants("style").Single().Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\"><img src=x onerror=alert(1)>")]
    [InlineData("]]>&amp;<!--")]
    [InlineData("\u0000\u000b\udc00\uffff")]
    public void Hostile_text_stays_text(string text)
    {
        var page = Read(Everywhere(text));
        Assert.Empty(page.Descendants("script"));
        Assert.DoesNotContain(page.Descendants().Attributes(), attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
    }

    [Fact]
    public void Whatever_is_written_the_page_is_well_formed() =>
        Prop.ForAll<string>(text => Read(Everywhere(text ?? "")).Descendants("h1").Count() == 1).QuickCheckThrowOnFailure();

    [Fact]
    public void A_photograph_that_is_no_picture_is_said_to_be_none()
    {
        var report = SampleReport.Small with { Deviations = [new(SampleReport.Small.Started, "A", "W1", "Odd.", "<svg onload='x'/>"u8.ToArray(), "00")] };
        var page = Read(report);
        Assert.Empty(page.Descendants("img"));
        Assert.Contains("is not shown", page.Value, StringComparison.Ordinal);
    }

    private static ReportModel Everywhere(string text) => SampleReport.Small with
    {
        Machine = text,
        Serial = text,
        Summary = text,
        Instruments = [text],
        Cautions = [text],
        Rows = [SampleReport.Small.Rows[0] with { SetUp = text, Title = text, Between = text, Expectation = text, Reading = text, Note = text, Person = text }],
        Deviations = [new(SampleReport.Small.Started, text, text, text, SampleReport.Picture, text)],
        Coverage = [new(text, 1, 0)],
        NotCovered = [new(text, text, text, 1)],
        SignOffs = [new(text, text, text, SampleReport.Small.Started)],
        LastHash = text,
    };

    /// <summary>Read by a strict XML reader; only the document type, which XML readers refuse for safety, is taken off.</summary>
    private static XElement Read(ReportModel report)
    {
        const string DocumentType = "<!DOCTYPE html>\n";
        var text = HtmlReport.Write(report);
        Assert.StartsWith(DocumentType, text, StringComparison.Ordinal);
        using var reader = XmlReader.Create(new StringReader(text[DocumentType.Length..]), new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit });
        return XElement.Load(reader);
    }
}
