using System.Net;
using Proveout.Web.Tests.Samples;

namespace Proveout.Web.Tests;

public sealed class StartPageTests : BenchPageTests
{
    private static readonly (string, string)[] Plain = [("name", "Hill bench"), ("mains", "none"), ("board", "four"), ("motors", "3"), ("person", "Ada")];

    [Fact]
    public async Task The_front_page_leads_to_the_guided_start() =>
        Assert.Contains("href=\"/describe\"", (await Visitor.GetAsync("/")).Html, StringComparison.Ordinal);

    [Fact]
    public async Task A_bench_without_builds_and_machines_says_how_to_begin()
    {
        await using var samples = await SampleBench.OpenAsync([]);
        await using var app = BenchHost.Build(new BenchHostOptions(), samples.Desks);
        await app.StartAsync();
        using var visitor = new Visitor(new Uri(app.Urls.First()));

        var front = await visitor.GetAsync("/");

        Assert.Contains("None yet. Describe your machine, and build it.", front.Text, StringComparison.Ordinal);
        Assert.Contains("href=\"/describe\"", front.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("<button type=\"submit\">Start</button>", front.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_described_machine_is_made_and_its_guesses_are_listed()
    {
        var made = await Visitor.SendAsync("/describe", "describe", Plain);

        Assert.Equal((HttpStatusCode.SeeOther, "/machines/hill-bench/guesses#"), (made.Status, made.Location));
        var guesses = await Visitor.GetAsync("/machines/hill-bench/guesses");
        Assert.Contains("M1, Motor of axis 1", guesses.Text, StringComparison.Ordinal);
        Assert.Contains("/machines/hill-bench/edit/parts?row=M1", guesses.Html, StringComparison.Ordinal);
        Assert.Contains("/machines/hill-bench/guesses", (await Visitor.GetAsync("/machines/hill-bench/edit")).Html, StringComparison.Ordinal);
        Assert.Matches("value=\"hill-bench\"[^>]*checked", (await Visitor.GetAsync("/?machine=hill-bench")).Html);
    }

    [Fact]
    public async Task Answers_that_contradict_each_other_come_back_as_typed_with_the_reason()
    {
        var refused = await Visitor.SendAsync("/describe", "describe", [.. Plain, ("plate", "mains"), ("fans", "2"), ("hot-end-power", "33")]);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains("Heated plate: A mains plate needs mains, and no mains enters this machine.", refused.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"Hill bench\"", refused.Html, StringComparison.Ordinal);
        Assert.Contains("value=\"33\"", refused.Html, StringComparison.Ordinal);
        Assert.Matches("<option value=\"mains\" selected", refused.Html);
    }

    [Fact]
    public async Task What_is_ticked_is_no_guess_any_more_and_what_is_stale_is_refused()
    {
        await Visitor.SendAsync("/describe", "describe", Plain);
        var before = await Visitor.GetAsync("/machines/hill-bench/guesses");
        var first = WebUtility.HtmlDecode(System.Text.RegularExpressions.Regex.Match(before.Html, "name=\"so-0\" value=\"([^\"]*)\"").Groups[1].Value);

        var confirmed = await Visitor.SendAsync("/machines/hill-bench/guesses", "confirm", ("so-0", first), ("person", "Ada"));
        Assert.Equal(HttpStatusCode.SeeOther, confirmed.Status);
        Assert.Contains("in Hill bench, not confirmed yet", (await Visitor.GetAsync("/")).Text, StringComparison.Ordinal);
        Assert.Contains("in Hill bench, not confirmed yet", (await Visitor.GetAsync("/machines/hill-bench/review")).Text, StringComparison.Ordinal);
        Assert.DoesNotContain("not confirmed yet", (await Visitor.GetAsync("/machines/pennywort/review")).Text, StringComparison.Ordinal);
        Assert.DoesNotContain(first, WebUtility.HtmlDecode((await Visitor.GetAsync("/machines/hill-bench/guesses")).Html), StringComparison.Ordinal);

        Assert.Contains("changed meanwhile", (await Visitor.SendAsync("/machines/hill-bench/guesses", "confirm", ("so-0", first), ("person", "Ada"))).Text, StringComparison.Ordinal);
        Assert.Contains("Nothing is ticked", (await Visitor.SendAsync("/machines/hill-bench/guesses", "confirm", ("person", "Ada"))).Text, StringComparison.Ordinal);
    }
}
