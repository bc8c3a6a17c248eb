using System.Globalization;
using System.Net;
using System.Text;

namespace Proveout.Web.Tests;

public sealed class ResonancePageTests : BenchPageTests
{
    [Fact]
    public async Task The_front_page_leads_there_and_the_caution_stands_before_the_form()
    {
        Assert.Contains("href=\"/resonance\"", (await Visitor.GetAsync("/")).Html, StringComparison.Ordinal);
        var page = await Visitor.GetAsync("/resonance");
        Assert.True(page.Html.IndexOf("nobody reaches in", StringComparison.Ordinal) < page.Html.IndexOf("<form", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Two_recordings_are_answered_with_plots_and_kept_in_the_record_of_a_build()
    {
        var page = await SendAsync([("recording", Table("x", 47)), ("other", Table("y", 62))], ("excited-by", "blows"), ("build", Server.Build.Id), ("title", "Shaken"), ("person", "Ida"));

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("Axis x: use ", page.Text, StringComparison.Ordinal);
        Assert.Contains("Axis y: use ", page.Text, StringComparison.Ordinal);
        Assert.Equal(4, page.Html.Split("<svg viewBox=\"0 0 360 240\"").Length - 1);
        Assert.Equal(4, page.Html.Split("<desc").Length - 1);
        Assert.True(Encoding.UTF8.GetByteCount(page.Html) < 150_000);
        Assert.Contains("Kept in the record of", page.Text, StringComparison.Ordinal);
        var record = await Visitor.GetAsync($"/builds/{Server.Build.Id}/record");
        Assert.Contains("Measured: Shaken.", record.Text, StringComparison.Ordinal);
        Assert.Contains("x.csv", record.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_no_table_is_refused_in_a_sentence_and_what_was_typed_stays()
    {
        var page = await SendAsync([("recording", "Dear reader")], ("corner-error", "0.25"), ("excited-by", "sweep"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("There is no column `time`", page.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"0.25\"", page.Html, StringComparison.Ordinal);
        Assert.Contains("value=\"sweep\" selected", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_recording_it_is_said_what_is_missing() =>
        Assert.Contains("There is no recording.", (await SendAsync([])).Text, StringComparison.Ordinal);

    private async Task<Page> SendAsync((string Field, string Text)[] files, params (string Field, string Text)[] typed)
    {
        using var content = new MultipartFormDataContent();
        foreach (var (field, text) in Visitor.Fill((await Visitor.GetAsync("/resonance")).HiddenFields("resonance"), typed))
            content.Add(new StringContent(text), field);
        foreach (var (field, text) in files)
            content.Add(new ByteArrayContent(Encoding.UTF8.GetBytes(text)), field, field == "recording" ? "x.csv" : "y.csv");
        return await Page.ReadAsync(await Visitor.Client.PostAsync("/resonance", content));
    }

    // Twelve seconds with four blows, at 1 kHz.
    private static string Table(string axis, double hertz)
    {
        var turn = 2 * Math.PI * hertz;
        var random = new Random(1);
        var text = new StringBuilder($"time [s];{axis} [m/s²]\n");
        for (var row = 0; row < 12_000; row++)
        {
            var sample = 0.02 * (random.NextDouble() - 0.5);
            foreach (var blow in new[] { 1.0, 3.5, 6, 8.5 })
                if (row / 1000.0 - blow is >= 0 and var time)
                    sample += 5 * Math.Exp(-0.05 * turn * time) * Math.Sin(turn * time);
            text.Append(CultureInfo.InvariantCulture, $"{row / 1000.0:0.000};{sample:0.00000}\n");
        }

        return text.ToString();
    }
}
