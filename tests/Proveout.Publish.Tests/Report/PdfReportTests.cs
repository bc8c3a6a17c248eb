using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Tokens;

namespace Proveout.Publish.Tests.Report;

public class PdfReportTests
{
    [Fact]
    public void Every_row_is_there_with_all_it_says()
    {
        using var pdf = new PdfReading(SampleReport.Small);
        var words = pdf.Pages.SelectMany(page => page).Select(word => word.Text).ToHashSet();
        foreach (var row in SampleReport.Small.Rows)
            foreach (var word in string.Join(' ', row.Title, row.Between, row.Expectation, row.Reading, row.Note, row.Person).Split(' ', StringSplitOptions.RemoveEmptyEntries))
                Assert.Contains(word, words);
    }

    [Fact]
    public void Cautions_and_what_the_record_does_not_say_stand_before_the_checks()
    {
        using var pdf = new PdfReading(SampleReport.Small);
        var checks = pdf.Text.IndexOf("Protective conductor to the frame", StringComparison.Ordinal);
        Assert.InRange(pdf.Text.IndexOf("Pull the mains lead", StringComparison.Ordinal), 0, checks);
        Assert.InRange(pdf.Text.IndexOf("Proveout does not say that this machine is safe.", StringComparison.Ordinal), 0, checks);
    }

    [Fact]
    public void Every_page_says_which_it_is_and_what_it_belongs_to()
    {
        using var pdf = new PdfReading(SampleReport.Large(60));
        Assert.True(pdf.Pages.Count > 3);
        for (var index = 0; index < pdf.Pages.Count; index++)
        {
            var text = string.Join(' ', pdf.Pages[index].Select(word => word.Text));
            Assert.Contains($"Page {index + 1} of {pdf.Pages.Count}", text, StringComparison.Ordinal);
            Assert.Contains(SampleReport.LastHash, text, StringComparison.Ordinal);
            Assert.Contains("Serial SO-0001", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Headings_stand_again_on_each_page_that_a_table_goes_on_to()
    {
        using var pdf = new PdfReading(SampleReport.Large(39));
        var continued = pdf.Pages.Where(page => page.Any(word => word.Text == "(continued)")).ToList();
        Assert.NotEmpty(continued);
        Assert.All(continued, page => Assert.Subset(page.Select(word => word.Text).ToHashSet(), new HashSet<string> { "No.", "Check", "Expected", "Reading", "Verdict", "By" }));
    }

    [Fact]
    public void Every_font_is_inside_the_file()
    {
        using var pdf = new PdfReading(SampleReport.Small);
        var descriptors = pdf.FontDescriptors.ToList();
        Assert.NotEmpty(descriptors);
        Assert.All(descriptors, descriptor => Assert.True(descriptor.ContainsKey(NameToken.Create("FontFile2"))));
    }

    [Fact]
    public void Words_of_three_hundred_checks_neither_overlap_nor_leave_the_page()
    {
        using var pdf = new PdfReading(SampleReport.Large(300));
        foreach (var page in pdf.Pages)
        {
            Assert.All(page, word => Assert.True(IsOnPage(word), $"'{word.Text}' leaves the page"));
            for (var first = 0; first < page.Count; first++)
                for (var second = first + 1; second < page.Count; second++)
                    Assert.False(Overlap(page[first], page[second]), $"'{page[first].Text}' overlaps '{page[second].Text}'");
        }
    }

    [Fact]
    public void None_of_three_hundred_checks_is_lost()
    {
        var report = SampleReport.Large(300);
        using var pdf = new PdfReading(report);
        var words = pdf.Pages.SelectMany(page => page).Select(word => word.Text).ToHashSet();
        foreach (var row in report.Rows)
            Assert.Subset(words, string.Join(' ', row.Title, row.Expectation, row.Reading, row.Note).Split(' ', StringSplitOptions.RemoveEmptyEntries).ToHashSet());
    }

    [Fact]
    public void A_row_taller_than_a_page_goes_on_over_pages_without_losing_a_word()
    {
        var words = Enumerable.Range(1, 1500).Select(number => $"w{number}").ToHashSet();
        var report = SampleReport.Small with { Rows = [SampleReport.Small.Rows[0] with { Title = string.Join(' ', words) }] };
        using var pdf = new PdfReading(report);
        Assert.Subset(pdf.Pages.SelectMany(page => page).Select(word => word.Text).ToHashSet(), words);
    }

    [Fact]
    public void A_word_longer_than_its_column_is_broken_inside_it()
    {
        var report = SampleReport.Small with { Rows = [SampleReport.Small.Rows[0] with { Reading = new string('8', 60), Expectation = "EXPECTED" }] };
        using var pdf = new PdfReading(report);
        Assert.Equal(60, pdf.Pages[0].Where(word => word.Text.All(letter => letter == '8')).Sum(word => word.Text.Length));
    }

    [Fact]
    public void A_figure_and_its_unit_stand_on_one_line_however_the_text_before_them_runs()
    {
        var report = SampleReport.Make("Small oven", [.. Enumerable.Range(0, 60).Select(count => SampleReport.Small.Rows[0] with { Number = 100 + count, Expectation = $"{new string('x', count % 20)} more than 9.75 MΩ or 12 h 97 min" })]);
        using var reading = new PdfReading(report);
        var words = reading.Pages.SelectMany(page => page).ToArray();
        var (ohms, minutes) = (words.Index().Where(word => word.Item.Text == "9.75").ToArray(), words.Index().Where(word => word.Item.Text == "97").ToArray());

        Assert.Equal(60, ohms.Length);
        Assert.Equal(60, minutes.Length);
        Assert.All(ohms, figure => Assert.Contains(words, unit => unit.Text == "MΩ" && IsBehind(figure.Item, unit)));
        Assert.All(minutes, figure => Assert.Contains(words, unit => unit.Text == "min" && IsBehind(figure.Item, unit)));
    }

    private static bool IsBehind(UglyToad.PdfPig.Content.Word one, UglyToad.PdfPig.Content.Word next) =>
        Math.Abs(one.BoundingBox.Bottom - next.BoundingBox.Bottom) < 2 && next.BoundingBox.Left - one.BoundingBox.Right is > 0 and < 5;

    [Fact]
    public void Symbols_of_units_come_back_as_they_went_in()
    {
        using var pdf = new PdfReading(SampleReport.Small with { Summary = "4 Ω 5 µF 6 mm² ±7 % 8 – 9 ≤ ≥ °C Ł ж λ" });
        Assert.Contains("4 Ω 5 µF 6 mm² ±7 % 8 – 9 ≤ ≥ °C Ł ж λ", pdf.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_character_that_the_fonts_lack_is_spelt_as_its_number()
    {
        using var pdf = new PdfReading(SampleReport.Small with { Summary = "oven \u4E2D \U0001F9EF end" });
        Assert.Contains("oven [U+4E2D] [U+1F9EF] end", pdf.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_file_says_what_it_is()
    {
        using var pdf = new PdfReading(SampleReport.Small);
        Assert.Equal("Small oven, SO-0001: record of checks", pdf.Information.Title);
        Assert.Equal("A. Builder", pdf.Information.Author);
        Assert.Equal(SampleReport.Small.Written, pdf.Information.GetCreatedDateTimeOffset());
        Assert.Equal(["Before anything else", "Checks"], pdf.Bookmarks.Take(2));
    }

    [Fact]
    public void A_photograph_is_in_it()
    {
        AssertPictures(1, SampleReport.Picture);
        AssertPictures(1, SampleReport.GreyPicture);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(40)]
    public void A_damaged_photograph_does_not_cost_the_report(int kept) => AssertPictures(0, SampleReport.Picture[..kept]);

    [Fact]
    public void Equal_reports_are_equal_files_and_different_ones_have_different_identifiers()
    {
        var file = PdfReading.Bytes(SampleReport.Small);
        Assert.Equal(file, PdfReading.Bytes(SampleReport.Small));
        Assert.NotEqual(file, PdfReading.Bytes(SampleReport.Small with { Serial = "SO-0002" }));
    }

    private static void AssertPictures(int expected, byte[] photo)
    {
        using var pdf = new PdfReading(SampleReport.Small with { Deviations = [new(SampleReport.Small.Started, "A", "E1", "Plug.", photo, "00")] });
        Assert.Equal(expected, pdf.PictureCount);
        Assert.Equal(expected == 0, pdf.Text.Contains("is not shown", StringComparison.Ordinal));
    }

    /// <summary>A4 in points, ISO 216.</summary>
    private static bool IsOnPage(Word word) =>
        word.BoundingBox is { Left: >= 40, Right: <= 555, Bottom: >= 30 } && word.BoundingBox.Top <= 812;

    /// <summary>More than a rounding error in common.</summary>
    private static bool Overlap(Word first, Word second)
    {
        var (a, b) = (first.BoundingBox, second.BoundingBox);
        return Common(a.Left, a.Right, b.Left, b.Right) > 0.2 && Common(a.Bottom, a.Top, b.Bottom, b.Top) > 0.2;
    }

    private static double Common(double low, double high, double otherLow, double otherHigh) => Math.Min(high, otherHigh) - Math.Max(low, otherLow);
}
