using System.Net;
using System.Text;

namespace Proveout.Web.Tests;

public sealed class MotionPageTests : IAsyncLifetime
{
    private BenchServer _server = null!;
    private Visitor _visitor = null!;

    public async ValueTask InitializeAsync()
    {
        _server = await BenchServer.StartAsync();
        _visitor = _server.Visit();
    }

    public async ValueTask DisposeAsync()
    {
        _visitor.Dispose();
        await _server.DisposeAsync();
    }

    [Fact]
    public async Task The_front_page_leads_to_both_pages()
    {
        var front = await _visitor.GetAsync("/");
        Assert.Contains("href=\"/tension\"", front.Html, StringComparison.Ordinal);
        Assert.Contains("href=\"/motor\"", front.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_caution_stands_before_the_form_and_recording_waits_for_scripts()
    {
        var page = await _visitor.GetAsync("/tension");
        Assert.True(page.Html.IndexOf("Power off", StringComparison.Ordinal) < page.Html.IndexOf("<form", StringComparison.Ordinal));
        Assert.Contains("hidden>Record", page.Html, StringComparison.Ordinal);
        Assert.Contains("<script type=\"module\" src=\"/assets/", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_scripts_are_handed_out_from_the_addresses_that_the_page_names()
    {
        var html = (await _visitor.GetAsync("/tension")).Html;
        foreach (var name in new[] { "tension.js", "recorder.js" })
        {
            var end = html.IndexOf(name, StringComparison.Ordinal) + name.Length;
            var start = html.LastIndexOf('"', end - 1) + 1;
            var script = await _visitor.GetAsync(html[start..end]);
            Assert.Equal(HttpStatusCode.OK, script.Status);
            Assert.StartsWith("text/javascript", script.Header("Content-Type"), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_recording_is_answered_with_note_force_and_plots_under_150_kB()
    {
        var page = await SendAsync([Pluck(110), Pluck(104)], ("span", "150"), ("mass", "8.4"), ("target", "9"));
        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("The left belt is tighter.", page.Text, StringComparison.Ordinal);
        Assert.Contains("110.0", page.Text, StringComparison.Ordinal);
        Assert.Equal(4, page.Html.Split("<svg viewBox=\"0 0 360 240\"").Length - 1);
        Assert.Equal(4, page.Html.Split("<desc").Length - 1);
        Assert.True(Encoding.UTF8.GetByteCount(page.Html) < 150_000);
    }

    [Fact]
    public async Task Both_recordings_of_a_pair_are_kept_with_what_they_said()
    {
        var page = await SendAsync([Pluck(110), Pluck(104)], ("span", "150"), ("mass", "8.4"), ("build", _server.Build.Id), ("person", "Ida"));
        var record = await _visitor.GetAsync(_server.Record);

        Assert.Contains("Kept in the record of", page.Text, StringComparison.Ordinal);
        Assert.Contains("Measured: Belt tension. The left belt is tighter.", record.Text, StringComparison.Ordinal);
        Assert.Equal(2, record.Html.Split("/files/").Length - 1);
        Assert.Contains("Measured: Belt tension, data file 2.", record.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_no_recording_is_refused_by_its_content_and_what_was_typed_stays()
    {
        var page = await SendAsync([[.. "\u0089PNG and nothing more"u8]], ("span", "147.5"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("This is no WAV file", page.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"147.5\"", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_from_elsewhere_is_refused()
    {
        var page = await _visitor.PostAsync("/tension", [new("frequency", "110")]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
    }

    [Fact]
    public async Task What_is_typed_cannot_become_markup()
    {
        var page = await SendAsync([], ("frequency", "<script>alert(1)</script>"));
        Assert.DoesNotContain("<script>alert", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_motor_stands_in_the_address_and_is_answered_with_its_curve()
    {
        var page = await _visitor.GetAsync("/motor?teeth=20&current=1.68&resistance=1.65&inductance=2.8&holding-torque=0.44&mass=0.5&acceleration=5&speed=300&belt-stiffness=10000&loop=1000&travel=300");
        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("1.17 A where the driver asks for r.m.s.", page.Text, StringComparison.Ordinal);
        Assert.Contains("Torque over speed", page.Text, StringComparison.Ordinal);
        Assert.Equal(2, page.Html.Split("<svg viewBox=\"0 0 360 240\"").Length - 1);
        Assert.True(Encoding.UTF8.GetByteCount(page.Html) < 150_000);
    }

    [Fact]
    public async Task A_motor_that_cannot_be_is_refused_and_what_was_typed_stays()
    {
        var page = await _visitor.GetAsync("/motor?teeth=many&lead=");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("`many` is no figure", page.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"many\"", page.Html, StringComparison.Ordinal);
    }

    private async Task<Page> SendAsync(byte[][] recordings, params (string Field, string Text)[] typed)
    {
        using var content = new MultipartFormDataContent();
        foreach (var (field, text) in Visitor.Fill((await _visitor.GetAsync("/tension")).HiddenFields("tension"), typed))
            content.Add(new StringContent(text), field);
        foreach (var (bytes, field) in recordings.Zip(["recording", "other-recording"]))
            content.Add(new ByteArrayContent(bytes), field, "belt.wav");
        return await Page.ReadAsync(await _visitor.Client.PostAsync("/tension", content));
    }

    // A second of three partials, 8 bits at 8 kHz.
    private static byte[] Pluck(double hertz)
    {
        const int Rate = 8000;
        byte[] samples = [.. Enumerable.Range(0, Rate * 5 / 4).Select(index => (index / (double)Rate) - 0.3).Select(time =>
            (byte)(128 + (time < 0 ? 0 : Enumerable.Range(1, 3).Sum(number => 50.0 / number * Math.Exp(-time * (3 + number)) * Math.Sin(2 * Math.PI * number * hertz * time)))))];
        return
        [
            .. "RIFF"u8, .. BitConverter.GetBytes(36 + samples.Length), .. "WAVEfmt "u8, .. BitConverter.GetBytes(16), 1, 0, 1, 0,
            .. BitConverter.GetBytes(Rate), .. BitConverter.GetBytes(Rate), 1, 0, 8, 0, .. "data"u8, .. BitConverter.GetBytes(samples.Length), .. samples,
        ];
    }
}
