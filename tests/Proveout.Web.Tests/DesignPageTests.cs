using System.Net;
using Proveout.Web.Tests.Samples;

namespace Proveout.Web.Tests;

public sealed class DesignPageTests : BenchPageTests
{
    [Fact]
    public async Task The_review_says_what_it_found_and_what_that_does_not_mean()
    {
        var page = await Visitor.GetAsync("/machines/alderbrook/review");
        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("What no rule looks for is not found.", page.Text, StringComparison.Ordinal);
        Assert.Contains("0 errors", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Paper_shows_cautions_before_the_first_schedule()
    {
        var page = await Visitor.GetAsync($"/machines/{SampleBench.Machine}/paper");
        Assert.True(page.Text.IndexOf("keep its plug in sight", StringComparison.Ordinal) is > 0 and var caution && caution < page.Text.IndexOf("Order of work", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Each_list_has_a_page_of_its_own_with_the_cautions_before_it()
    {
        var page = await Visitor.GetAsync($"/machines/{SampleBench.Machine}/paper?list=wire-list");
        Assert.True(page.Text.IndexOf("keep its plug in sight", StringComparison.Ordinal) is > 0 and var caution && caution < page.Text.IndexOf("W51", StringComparison.Ordinal));
        Assert.DoesNotContain("Order of work", page.Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await Visitor.GetAsync($"/machines/{SampleBench.Machine}/paper?list=nothing")).Status);
    }

    [Fact]
    public async Task The_walk_says_once_what_good_looks_like_and_with_each_tug_what_it_holds()
    {
        var page = await Visitor.GetAsync($"/machines/{SampleBench.Machine}/walk");
        Assert.Contains("What good and bad look like", page.Text, StringComparison.Ordinal);
        Assert.Contains("<span>Should hold</span> <strong>10.0 N or more", page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("yes 1, no 0", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_walk_says_its_caution_before_anything_to_look_at()
    {
        var page = await Visitor.GetAsync($"/machines/{SampleBench.Machine}/walk");
        Assert.InRange(page.Html.IndexOf("class=\"caution", StringComparison.Ordinal), 1, page.Html.IndexOf("What good and bad look like", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("schedules.pdf", "application/pdf", "%PDF-")]
    [InlineData("labels.pdf", "application/pdf", "%PDF-")]
    [InlineData("wire-list.csv", "text/csv; charset=utf-8", "Wire,From,To")]
    public async Task Paper_comes_as_files(string name, string type, string start)
    {
        var file = await Visitor.GetAsync($"/machines/{SampleBench.Machine}/paper/{name}");
        Assert.Equal((HttpStatusCode.OK, type), (file.Status, file.Header("Content-Type")));
        Assert.StartsWith(start, file.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_wire_of_the_mains_shows_its_caution_before_its_ends()
    {
        var page = await Visitor.GetAsync("/machines/alderbrook/wires/W101");
        Assert.True(page.Text.IndexOf("prove dead before you touch it", StringComparison.Ordinal) is > 0 and var caution && caution < page.Text.IndexOf("X1.L", StringComparison.Ordinal));
        Assert.Contains("S1.1", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_drawing_that_is_listed_opens_alone_and_can_do_nothing_but_show()
    {
        var page = await Visitor.GetAsync($"/machines/{SampleBench.Machine}/drawings");
        Assert.Contains("schematic", page.Html, StringComparison.Ordinal);
        foreach (var address in new[] { "/machines/alderbrook/drawings/part-x1.svg", "/machines/alderbrook/wires/W101/1.svg" })
        {
            var drawing = await Visitor.GetAsync(address);
            Assert.Equal((HttpStatusCode.OK, "image/svg+xml"), (drawing.Status, drawing.Header("Content-Type").Split(';')[0]));
            Assert.StartsWith("default-src 'none'; style-src 'unsafe-inline'", drawing.Header("Content-Security-Policy"), StringComparison.Ordinal);
            Assert.StartsWith("<svg", drawing.Html, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Heat_shows_cautions_before_the_first_figure_and_every_mistake_that_was_simulated()
    {
        var page = await Visitor.GetAsync("/machines/alderbrook/heat");
        Assert.True(page.Text.IndexOf("one hand on the switch", StringComparison.Ordinal) is > 0 and var caution && caution < page.Text.IndexOf("at full output it shows", StringComparison.Ordinal));
        Assert.Contains("The sensor has fallen out of what is heated.", page.Text, StringComparison.Ordinal);
        Assert.Contains("The machine file does not say what it heats.", (await Visitor.GetAsync("/machines/quarrymoor/heat")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Air_shows_cautions_first_and_every_part_against_its_limit_in_plot_table_and_words()
    {
        var page = await Visitor.GetAsync("/machines/alderbrook/air");
        Assert.True(page.Text.IndexOf("Blades cut", StringComparison.Ordinal) is > 0 and var caution && caution < page.Text.IndexOf("are given off in bay", StringComparison.Ordinal));
        Assert.Contains("Fans and openings of bay", page.Html, StringComparison.Ordinal);
        Assert.Contains("T1 at most", page.Text, StringComparison.Ordinal);
        Assert.Contains("is turned round: it blows in.", page.Text, StringComparison.Ordinal);
        Assert.Contains("does not say what its bays are", (await Visitor.GetAsync("/machines/quarrymoor/air")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Belts_show_cautions_first_and_move_with_the_address()
    {
        var page = await Visitor.GetAsync("/machines/alderbrook/belts?x=10&y=290&z=nothing");

        Assert.True(page.Text.IndexOf("prove dead", StringComparison.Ordinal) is > 0 and var caution && caution < page.Text.IndexOf("Trace", StringComparison.Ordinal));
        Assert.Contains("Belts in deck, x at 10 mm, y at 290 mm, z at 125 mm", page.Html, StringComparison.Ordinal);
        Assert.Contains("passes beam-left-upper on the wrong side", page.Text, StringComparison.Ordinal);
        Assert.Contains("does not say what moves its axes", (await Visitor.GetAsync("/machines/quarrymoor/belts")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_film_of_the_belts_comes_as_a_picture_of_its_own()
    {
        var page = await Visitor.GetAsync("/machines/alderbrook/belts");
        Assert.Contains("src=\"/machines/alderbrook/belts/deck/x.svg\"", page.Html, StringComparison.Ordinal);
        Assert.InRange(page.Html.Length, 1, 150_000);

        var film = await Visitor.GetAsync("/machines/alderbrook/belts/deck/x.svg");
        Assert.Equal((HttpStatusCode.OK, "image/svg+xml"), (film.Status, film.Header("Content-Type").Split(';')[0]));
        Assert.StartsWith("default-src 'none'; style-src 'unsafe-inline'", film.Header("Content-Security-Policy"), StringComparison.Ordinal);
        Assert.Contains("x at 0 mm", film.Html, StringComparison.Ordinal);
        Assert.InRange(film.Html.Length, 1, 150_000);
        Assert.Equal(HttpStatusCode.NotFound, (await Visitor.GetAsync("/machines/alderbrook/belts/deck/w.svg")).Status);
    }

    [Fact]
    public async Task What_is_seen_of_belts_is_answered_with_suspects_and_the_next_check_and_can_be_kept()
    {
        var page = await Visitor.GetAsync("/machines/alderbrook/belts?seen-way%3Ax=3");

        Assert.Contains("You say: another axis moves instead of x.", page.Text, StringComparison.Ordinal);
        Assert.True(page.Text.IndexOf("Caution, before this check", StringComparison.Ordinal) is > 0 and var caution && caution < page.Text.IndexOf("Sound, it reads", StringComparison.Ordinal));
        Assert.Contains("<option value=\"3\" selected", page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("What can it be?", (await Visitor.GetAsync("/machines/alderbrook/belts")).Text.Replace("What can it be? Keep", "", StringComparison.Ordinal).Split("What you see")[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/machines/nowhere/belts")]
    [InlineData("/machines/nowhere/heat")]
    [InlineData("/machines/nowhere/air")]
    [InlineData("/machines/nowhere/drawings")]
    [InlineData("/machines/pennywort/drawings/nothing.svg")]
    [InlineData("/machines/pennywort/wires/W0/1.svg")]
    [InlineData("/machines/nowhere/review")]
    [InlineData("/machines/nowhere/paper")]
    [InlineData("/machines/pennywort/paper/nothing.csv")]
    [InlineData("/machines/pennywort/wires/W0")]
    public async Task What_is_not_there_is_said_to_be_missing(string address) =>
        Assert.Equal(HttpStatusCode.NotFound, (await Visitor.GetAsync(address)).Status);
}
