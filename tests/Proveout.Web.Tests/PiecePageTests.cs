using System.Net;
using System.Text;

namespace Proveout.Web.Tests;

public sealed class PiecePageTests : BenchPageTests
{
    [Fact]
    public async Task The_page_draws_a_piece_for_the_machine_and_gives_its_files()
    {
        var page = await Visitor.GetAsync("/piece?made=printed&travel-x=180&travel-y=180");

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.True(Encoding.UTF8.GetByteCount(page.Html) < 150_000, $"{page.Html.Length}");
        Assert.Contains("First test piece, double ring 100 mm", page.Text, StringComparison.Ordinal);
        foreach (var (name, type) in new[] { ("first-piece.3mf", "model/3mf"), ("first-piece.stl", "model/stl"), ("first-piece.csv", "text/csv"), ("first-piece.svg", "image/svg+xml") })
        {
            var file = await Visitor.Client.GetAsync($"/piece/{name}?made=printed&travel-x=180&travel-y=180");
            Assert.Equal(HttpStatusCode.OK, file.StatusCode);
            Assert.Equal(type, file.Content.Headers.ContentType!.MediaType);
        }
    }

    [Fact]
    public async Task Readings_are_judged_and_kept_in_the_record_of_a_build()
    {
        var page = await Visitor.SendAsync(
            "/piece?made=milled&ring=100", "piece", ("measure-1", "100.9 100.92"), ("measure-2", "100"), ("measure-5", "80,72"), ("measure-6", "80"), ("measure-9", "50.45"), ("measure-10", "50"), ("measure-13", "30.27"), ("measure-14", "30"),
            ("build", Server.Build.Id), ("person", "Ida"));

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("real, and surely beyond the limit.", page.Text, StringComparison.Ordinal);
        Assert.Contains("Multiply the steps for each mm of X by 0.99", page.Text, StringComparison.Ordinal);
        Assert.Contains("Lengths against the drawing", page.Text, StringComparison.Ordinal);
        Assert.Contains("Measured: First piece.", (await Visitor.GetAsync($"/builds/{Server.Build.Id}/record")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_is_refused_and_what_was_typed_is_kept()
    {
        var page = await Visitor.SendAsync("/piece", "piece", ("wall", "0.45 0.46"), ("measure-1", "a hundred"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("2 places are too few.", page.Text, StringComparison.Ordinal);
        Assert.Contains("`a` is no figure in mm.", page.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"a hundred\"", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_machine_that_is_too_small_is_said_on_the_page_and_for_a_file()
    {
        var page = await Visitor.GetAsync("/piece?travel-y=80");
        var file = await Visitor.GetAsync("/piece/first-piece.stl?travel-y=80");

        Assert.Equal((HttpStatusCode.UnprocessableEntity, HttpStatusCode.UnprocessableEntity), (page.Status, file.Status));
        Assert.Contains("The smallest piece needs", page.Text, StringComparison.Ordinal);
        Assert.Contains("The smallest piece needs", file.Html, StringComparison.Ordinal);
    }
}
