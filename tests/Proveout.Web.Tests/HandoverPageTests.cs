using System.Net;
using System.Text;

namespace Proveout.Web.Tests;

public sealed class HandoverPageTests : BenchPageTests
{
    [Fact]
    public async Task The_settings_of_a_machine_are_a_page_and_files()
    {
        var page = await Visitor.GetAsync("/machines/pennywort/settings");

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.True(Encoding.UTF8.GetByteCount(page.Html) < 150_000, $"{page.Html.Length}");
        Assert.True(page.Text.IndexOf("can set fire to a machine", StringComparison.Ordinal) < page.Text.IndexOf("Output OUT0 of A1", StringComparison.Ordinal), "The caution comes first.");
        foreach (var (name, type) in new[] { ("settings.csv", "text/csv"), ("settings.html", "text/html"), ("settings.pdf", "application/pdf") })
        {
            var file = await Visitor.Client.GetAsync($"/machines/pennywort/settings/{name}");
            Assert.Equal((HttpStatusCode.OK, type), (file.StatusCode, file.Content.Headers.ContentType!.MediaType));
        }

        Assert.Equal(HttpStatusCode.NotFound, (await Visitor.GetAsync("/machines/pennywort/settings/../../secret")).Status);
    }

    [Fact]
    public async Task A_measurement_of_a_build_stands_on_its_sheet_of_settings()
    {
        await Visitor.SendAsync("/frame", "frame", ("stop-left", "0"), ("stop-right", "0,6"), ("span", "400"), ("build", Server.Build.Id), ("title", "Gantry"), ("person", "Ida"));

        var page = await Visitor.GetAsync($"/builds/{Server.Build.Id}/settings");

        Assert.Contains("Measured on this build", page.Text, StringComparison.Ordinal);
        Assert.Contains("Gantry: ", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Squareness of the frame", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_found_of_an_item_is_kept_with_its_name()
    {
        var address = $"/builds/{Server.Build.Id}/acceptance";
        var sent = await Visitor.SendAsync(address, "paste-warm-up", ("found", "good"), ("person", "Ida"));

        Assert.Equal(HttpStatusCode.SeeOther, sent.Status);
        Assert.Contains("1 as they should be, 0 not", (await Visitor.GetAsync(address)).Text, StringComparison.Ordinal);
        Assert.Contains("Measured: Warm-up of paste. As it should be.", (await Visitor.GetAsync($"/builds/{Server.Build.Id}/record")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_not_good_needs_a_note()
    {
        var page = await Visitor.SendAsync($"/builds/{Server.Build.Id}/acceptance", "paste-warm-up", ("found", "not good"), ("person", "Ida"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("Say what you saw", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_calendar_begins_on_the_day_that_was_asked_for_and_a_wrong_day_is_taken_as_today()
    {
        var calendar = await Visitor.Client.GetStringAsync("/machines/pennywort/acceptance/calendar.ics?first=2027-01-10&hours=10");

        Assert.Contains("DTSTART;VALUE=DATE:20270117", calendar, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await Visitor.GetAsync("/machines/pennywort/acceptance/calendar.ics?first=never&hours=-3")).Status);
    }

    [Fact]
    public async Task A_machine_of_which_nothing_comes_later_says_so()
    {
        var page = await Visitor.GetAsync("/machines/pennywort/stages");

        Assert.Contains("Nothing of this machine is left for later.", page.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/machines/nowhere/settings")]
    [InlineData("/machines/nowhere/acceptance")]
    [InlineData("/machines/nowhere/stages")]
    [InlineData("/builds/nowhere/settings")]
    [InlineData("/builds/nowhere/acceptance")]
    public async Task What_is_not_there_is_said(string address) => Assert.Equal(HttpStatusCode.NotFound, (await Visitor.GetAsync(address)).Status);
}
