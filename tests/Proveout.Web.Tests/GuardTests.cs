using System.Net;
using System.Net.Http.Headers;
using Proveout.Workshop;

namespace Proveout.Web.Tests;

public sealed class GuardTests
{
    private const string Hostile = "<script>alert(1)</script>\"'><img src=x onerror=alert(2)>";

    [Fact]
    public async Task Hostile_names_are_shown_as_text()
    {
        await using var server = await BenchServer.StartAsync(serial: Hostile, builder: Hostile);
        using var visitor = server.Visit();
        var check = server.Check(await server.StepAsync(1));
        await visitor.SendAsync(check, "reading", ("text", "0.3"), ("person", Hostile));
        await visitor.SendAsync(check, "deviation", ("note", Hostile));
        foreach (var address in new[] { "/", check, $"/builds/{server.Build.Id}/record", $"/builds/{server.Build.Id}/checks" })
        {
            var html = (await visitor.GetAsync(address)).Html;
            Assert.DoesNotContain("<script>alert", html, StringComparison.Ordinal);
            Assert.DoesNotContain("<img src=x", html, StringComparison.Ordinal);
            Assert.Contains("&lt;script&gt;alert(1)", html, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/nothing/here")]
    [InlineData("/machines/pennywort/plan")]
    public async Task Every_page_forbids_foreign_and_inline_scripts_frames_and_guessed_types(string address)
    {
        await using var server = await BenchServer.StartAsync();
        using var visitor = server.Visit();
        var page = await visitor.GetAsync(address);
        Assert.Contains("default-src 'none'; style-src 'self'; script-src 'self'", page.Header("Content-Security-Policy"), StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", page.Header("Content-Security-Policy"), StringComparison.Ordinal);
        Assert.Equal("nosniff", page.Header("X-Content-Type-Options"));
        Assert.Equal("DENY", page.Header("X-Frame-Options"));
        Assert.Equal("", page.Header("Server"));
    }

    [Theory]
    [InlineData("/nothing/here", "There is no page at this address.")]
    [InlineData("/builds/none", "There is no such build.")]
    [InlineData("/builds/none/record", "There is no such build.")]
    [InlineData("/builds/none/checks", "There is no such build.")]
    [InlineData("/builds/none/events", "There is no such build.")]
    [InlineData("/builds/BUILD/checks/none", "There is no such check in this build.")]
    [InlineData("/builds/BUILD/photos/none", "There is no such photograph.")]
    [InlineData("/machines/none/plan", "There is no such machine.")]
    [InlineData("/assets/0000/proveout.css", "There is no page at this address.")]
    public async Task What_is_not_there_says_so(string address, string sentence)
    {
        await using var server = await BenchServer.StartAsync();
        using var visitor = server.Visit();
        var page = await visitor.GetAsync(address.Replace("BUILD", server.Build.Id, StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.NotFound, page.Status);
        Assert.Contains(sentence, page.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bench.example")]
    [InlineData("127.0.0.1.bench.example")]
    public async Task A_foreign_host_name_is_turned_away(string host)
    {
        await using var server = await BenchServer.StartAsync();
        using var visitor = server.Visit();
        visitor.Client.DefaultRequestHeaders.Host = host;
        var page = await visitor.GetAsync("/");
        Assert.Equal(HttpStatusCode.BadRequest, page.Status);
        Assert.DoesNotContain("oven-7", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_failure_inside_is_told_without_its_text()
    {
        await using var server = await BenchServer.StartAsync(bench => new FailingBench(bench));
        using var visitor = server.Visit();
        var page = await visitor.GetAsync(server.Check(await server.StepAsync(1)));
        Assert.Equal(HttpStatusCode.InternalServerError, page.Status);
        Assert.Contains("The bench could not do that.", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(FailingBench.Secret, page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", page.Html, StringComparison.Ordinal);
        Assert.Contains("default-src 'none'", page.Header("Content-Security-Policy"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/json")]
    public async Task A_form_that_is_none_enters_nothing(string contentType)
    {
        await using var server = await BenchServer.StartAsync();
        using var visitor = server.Visit();
        using var content = new StringContent("form=reading&text=0.3", null, contentType);
        var page = await Page.ReadAsync(await visitor.Client.PostAsync(server.Check(await server.StepAsync(1)), content));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Equal(StepStatus.Open, (await server.StepAsync(1)).Status);
    }

    [Fact]
    public async Task Parts_of_a_form_that_end_in_the_middle_are_no_failure_inside()
    {
        await using var server = await BenchServer.StartAsync();
        using var visitor = server.Visit();
        using var body = new StringContent("t");
        body.Headers.ContentType = MediaTypeHeaderValue.Parse("multipart/form-data; boundary=x");

        var page = await Page.ReadAsync(await visitor.Client.PostAsync(new Uri("/piece", UriKind.Relative), body));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("ended in the middle", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_that_cannot_be_read_is_refused_where_it_was_sent_and_nowhere_else_on_the_page()
    {
        await using var server = await BenchServer.StartAsync();
        using var visitor = server.Visit();
        var address = server.Check(await server.StepAsync(1));
        using var body = new StringContent("t");
        body.Headers.ContentType = MediaTypeHeaderValue.Parse("multipart/form-data; boundary=x");

        var page = await Page.ReadAsync(await visitor.Client.PostAsync(new Uri($"{address}?form=photo", UriKind.Relative), body));

        Assert.Contains($"action=\"{address}?form=photo#problems-photo\"", page.Html, StringComparison.Ordinal);
        Assert.Equal(["problems-photo"], System.Text.RegularExpressions.Regex.Matches(page.Html, "id=\"(problems-[^\"]*)\"").Select(match => match.Groups[1].Value));
    }

    [Fact]
    public async Task The_stylesheet_is_kept_for_ever_under_an_address_of_its_content()
    {
        await using var server = await BenchServer.StartAsync();
        using var visitor = server.Visit();
        var front = await visitor.GetAsync("/");
        var start = front.Html.IndexOf("/assets/", front.Html.IndexOf("stylesheet", StringComparison.Ordinal), StringComparison.Ordinal);
        var address = front.Html[start..front.Html.IndexOf('"', start)];
        var sheet = await visitor.GetAsync(address);
        Assert.Equal("public, max-age=31536000, immutable", sheet.Header("Cache-Control"));
        visitor.Client.DefaultRequestHeaders.Add("If-None-Match", sheet.Header("ETag"));
        Assert.Equal(HttpStatusCode.NotModified, (await visitor.GetAsync(address)).Status);
    }

    [Fact]
    public void Only_a_loopback_address_is_listened_on()
    {
        var options = new BenchHostOptions { Address = IPAddress.Any };
        Assert.Throws<ArgumentException>(() => BenchHost.Build(options, null!));
    }

    [Fact]
    public async Task The_bench_stops_at_once_although_a_window_listens()
    {
        var server = await BenchServer.StartAsync();
        using var visitor = server.Visit();
        await using var stream = await visitor.Client.GetStreamAsync($"/builds/{server.Build.Id}/events?after=1");
        await server.DisposeAsync().AsTask().WaitAsync(TimeSpan.FromSeconds(5));
    }
}
