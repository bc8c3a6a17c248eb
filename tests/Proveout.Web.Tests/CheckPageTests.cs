using System.Net;
using Proveout.Workshop;

namespace Proveout.Web.Tests;

public sealed class CheckPageTests : IAsyncLifetime
{
    private BenchServer _server = null!;
    private Visitor _visitor = null!;

    public async ValueTask InitializeAsync() => _visitor = (_server = await BenchServer.StartAsync()).Visit();

    public async ValueTask DisposeAsync()
    {
        _visitor.Dispose();
        await _server.DisposeAsync();
    }

    private string First => _server.CheckAddress("bond-panel");

    [Fact]
    public async Task A_build_leads_to_the_check_to_do_now()
    {
        var answer = await _visitor.GetAsync($"/builds/{_server.Build.Id}");
        Assert.Equal(HttpStatusCode.SeeOther, answer.Status);
        Assert.Equal(First, answer.Location);
    }

    [Fact]
    public async Task Cautions_stand_before_the_instructions_and_the_field()
    {
        var text = (await _visitor.GetAsync(First)).Text;
        var caution = text.IndexOf("Mains voltage kills", StringComparison.Ordinal);
        var setUp = text.IndexOf("Pull the mains plug", StringComparison.Ordinal);
        var field = text.IndexOf("What does it read?", StringComparison.Ordinal);
        Assert.True(0 < caution && caution < setUp && setUp < field);
    }

    [Fact]
    public async Task Cautions_stay_on_a_check_whose_set_up_is_kept()
    {
        var page = await _visitor.GetAsync(_server.CheckAddress("heater"));
        Assert.Contains("Mains voltage kills", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("New set-up", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_check_says_where_to_touch_what_to_set_what_it_should_read_and_why()
    {
        var text = (await _visitor.GetAsync(First)).Text;
        Assert.Contains("Red lead on X1.PE", text, StringComparison.Ordinal);
        Assert.Contains("Black lead on F1.stud", text, StringComparison.Ordinal);
        Assert.Contains("Resistance, 200 Ω range", text, StringComparison.Ordinal);
        Assert.Contains("at most 0.5 Ω", text, StringComparison.Ordinal);
        Assert.Contains("The bonding wire is short and thick.", text, StringComparison.Ordinal);
        Assert.Contains("Check 1 of 6", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bond-panel", "0.3", "Pass")]
    [InlineData("coil", "1k0", "Pass")]
    [InlineData("coil", "4,7 kΩ", "Fail")]
    [InlineData("line-to-neutral", "OL", "Pass")]
    [InlineData("bond-panel", "open", "Fail")]
    [InlineData("bond-panel", "-", "Cannot tell")]
    public async Task A_reading_is_judged_on_the_page_that_follows(string check, string typed, string word)
    {
        var sent = await _visitor.SendAsync(_server.CheckAddress(check), "reading", ("text", typed));
        Assert.Equal(HttpStatusCode.SeeOther, sent.Status);
        Assert.Contains($"<span class=\"word\">{word}</span>", (await _visitor.GetAsync(sent.Location!)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_pass_offers_the_next_check()
    {
        await _visitor.SendAsync(First, "reading", ("text", "0.3"));
        var page = await _visitor.GetAsync(First);
        Assert.Contains($"href=\"{_server.CheckAddress("line-to-relay")}\" autofocus", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_fail_ranks_suspects_with_share_and_consequence_and_names_the_next_best_check()
    {
        await _visitor.SendAsync(First, "reading", ("text", "OL"));
        var text = (await _visitor.GetAsync(First)).Text;
        Assert.Contains("72 % likely The bonding wire W3 is missing. Can give a shock The rear panel can become live", text, StringComparison.Ordinal);
        Assert.Contains("under 1 %", text, StringComparison.Ordinal);
        Assert.Contains("Next best check Temperature sensor", text, StringComparison.Ordinal);
        Assert.Contains("Go on with the plan Inlet line to relay", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_reading_that_is_not_understood_comes_back_with_what_can_be_typed()
    {
        var page = await _visitor.SendAsync(First, "reading", ("text", "about \"three\""), ("person", "Jo"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("is not a reading. Type a number such as 0.3 or 4k7", page.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"about &quot;three&quot;\"", page.Html, StringComparison.Ordinal);
        Assert.Contains("value=\"Jo\"", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_form_sent_twice_is_one_entry()
    {
        var fields = Visitor.Fill((await _visitor.GetAsync(First)).HiddenFields("reading"), ("text", "0.3"));
        await _visitor.PostAsync(First, fields);
        await _visitor.PostAsync(First, fields);
        Assert.Equal(2, (await StateAsync()).LastSequence);
    }

    [Fact]
    public async Task A_check_is_skipped_with_its_reason()
    {
        await _visitor.SendAsync(First, "skip", ("reason", "The panel is painted."));
        var page = await _visitor.GetAsync(First);
        Assert.Contains("Left out: The panel is painted.", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_skip_without_a_reason_is_refused()
    {
        var page = await _visitor.SendAsync(First, "skip", ("reason", " "));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Equal(StepStatus.Open, (await StateAsync()).Steps[0].Status);
    }

    [Fact]
    public async Task A_deviation_is_noted_and_shown()
    {
        var sent = await _visitor.SendAsync(First, "deviation", ("note", "Bond wire is 2.5 mm²."));
        Assert.Contains("Bond wire is 2.5 mm².", (await _visitor.GetAsync(sent.Location!)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_name_of_who_enters_is_remembered_in_a_plain_cookie()
    {
        var sent = await _visitor.SendAsync(First, "reading", ("text", "0.3"), ("person", "Zoë Ångström"));
        Assert.Contains("person=Zo%C3%AB%20%C3%85ngstr%C3%B6m; max-age=31536000; path=/; samesite=strict; httponly", sent.Header("Set-Cookie"), StringComparison.OrdinalIgnoreCase);
        Assert.Contains("value=\"Zo&#xEB; &#xC5;ngstr&#xF6;m\"", (await _visitor.GetAsync(_server.CheckAddress("coil"))).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_without_its_guard_enters_nothing_and_keeps_what_was_typed()
    {
        var fields = Visitor.Fill((await _visitor.GetAsync(First)).HiddenFields("reading"), ("text", "0.31"));
        fields.Remove("__RequestVerificationToken");
        var page = await _visitor.PostAsync(First, fields);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("value=\"0.31\"", page.Html, StringComparison.Ordinal);
        Assert.Equal(1, (await StateAsync()).LastSequence);
    }

    [Fact]
    public async Task A_form_of_an_earlier_run_of_the_bench_comes_back_filled_in_and_can_be_sent_again()
    {
        Dictionary<string, string> fields;
        await using (var before = await BenchServer.StartAsync())
        using (var earlier = before.Visit())
            fields = Visitor.Fill((await earlier.GetAsync(before.CheckAddress("bond-panel"))).HiddenFields("reading"), ("text", "0.31"));
        var page = await _visitor.PostAsync(First, fields);
        Assert.Contains("value=\"0.31\"", page.Html, StringComparison.Ordinal);
        var again = await _visitor.PostAsync(First, Visitor.Fill(page.HiddenFields("reading"), ("text", "0.31")));
        Assert.Equal(HttpStatusCode.SeeOther, again.Status);
    }

    [Fact]
    public async Task A_drawing_stands_in_the_page_without_scripts_or_styles_of_its_own()
    {
        var html = (await _visitor.GetAsync(First)).Html;
        Assert.Contains("fill=\"var(--lead-red, #c62828)\"", html, StringComparison.Ordinal);
        Assert.DoesNotContain("alert(1)", html, StringComparison.Ordinal);
        Assert.DoesNotContain("style=\"", html, StringComparison.Ordinal);
    }

    private async Task<BenchState> StateAsync() => (await _server.Bench.StateAsync(_server.Build.Id, default))!;
}
