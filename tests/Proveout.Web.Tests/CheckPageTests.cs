using System.Net;
using Proveout.Web.Tests.Samples;
using Proveout.Workshop;

namespace Proveout.Web.Tests;

public sealed class CheckPageTests : IAsyncLifetime
{
    private BenchServer _server = null!;
    private Visitor _visitor = null!;
    private BenchStep _step = null!;

    public async ValueTask InitializeAsync()
    {
        _server = await BenchServer.StartAsync();
        _visitor = _server.Visit();
        _step = await _server.StepAsync(1);
    }

    public async ValueTask DisposeAsync()
    {
        _visitor.Dispose();
        await _server.DisposeAsync();
    }

    private string First => _server.Check(_step);

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
        var caution = text.IndexOf(_step.SetUp.Cautions[0], StringComparison.Ordinal);
        var setUp = text.IndexOf(_step.SetUp.Instructions[0], StringComparison.Ordinal);
        var field = text.IndexOf("What does it read?", StringComparison.Ordinal);
        Assert.True(0 < caution && caution < setUp && setUp < field);
    }

    [Fact]
    public async Task Cautions_stay_on_a_check_whose_set_up_is_kept()
    {
        var second = await _server.StepAsync(2);
        var text = (await _visitor.GetAsync(_server.Check(second))).Text;
        Assert.All(second.SetUp.Cautions, caution => Assert.Contains(caution, text, StringComparison.Ordinal));
        Assert.DoesNotContain("New set-up", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_check_says_where_to_touch_what_to_set_what_it_should_read_and_why()
    {
        var page = await _visitor.GetAsync(First);
        foreach (var words in new[] { _step.Check.Title, _step.Check.Instruction, _step.MeterSetting, _step.Expected, _step.Check.Why, _step.CatchesShort })
            Assert.Contains(words, page.Text, StringComparison.Ordinal);
        Assert.Contains($"Check 1 of {(await _server.StateAsync()).Steps.Count}", page.Text, StringComparison.Ordinal);
        Assert.Contains("<svg", page.Html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true, "Pass", StepStatus.Passed)]
    [InlineData(false, "Fail", StepStatus.Failed)]
    public async Task A_reading_is_judged_on_the_page_that_follows(bool good, string word, StepStatus status)
    {
        var sent = await _visitor.SendAsync(First, "reading", ("text", good ? Typed.Good(_step) : Typed.Bad(_step)));
        Assert.Equal(HttpStatusCode.SeeOther, sent.Status);
        Assert.Contains($"<span class=\"word\">{word}</span>", (await _visitor.GetAsync(sent.Location!)).Html, StringComparison.Ordinal);
        Assert.Equal(status, (await _server.StepAsync(1)).Status);
    }

    [Theory]
    [InlineData("0.3", "0.30 Ω")]
    [InlineData("4k7", "4.70 kΩ")]
    [InlineData("4,7 kΩ", "4.70 kΩ")]
    [InlineData("OL", "OL")]
    [InlineData("open", "OL")]
    [InlineData("-", "OL")]
    public async Task A_reading_may_be_written_in_several_ways(string typed, string shown)
    {
        await _visitor.SendAsync(First, "reading", ("text", typed));
        Assert.Contains($"It reads {shown}", (await _visitor.GetAsync(First)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_pass_offers_the_next_check()
    {
        await _visitor.SendAsync(First, "reading", ("text", Typed.Good(_step)));
        var next = await _server.StepAsync(2);
        Assert.Contains($"href=\"{_server.Check(next)}\" autofocus", (await _visitor.GetAsync(First)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_fail_ranks_suspects_with_share_and_consequence_and_names_the_next_best_check()
    {
        await _visitor.SendAsync(First, "reading", ("text", Typed.Bad(_step)));
        var state = await _server.StateAsync();
        var page = await _visitor.GetAsync(First);
        var places = state.Suspects.Take(6).Select(suspect => page.Text.IndexOf(suspect.Sentence, StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(places);
        Assert.All(places, place => Assert.True(place > 0));
        Assert.Equal(places.Order(), places);
        Assert.Contains(state.Suspects[0].Consequence, page.Text, StringComparison.Ordinal);
        Assert.Contains($"{state.Suspects[0].Probability * 100:0} % likely", page.Text, StringComparison.Ordinal);
        Assert.Contains($"href=\"/builds/{_server.Build.Id}/checks/{state.NextBestCheckId}\" autofocus", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task While_there_are_suspects_a_pass_leads_to_the_next_best_check_too()
    {
        await _visitor.SendAsync(First, "reading", ("text", Typed.Bad(_step)));
        var best = (await _server.StateAsync()).FindStep((await _server.StateAsync()).NextBestCheckId!)!;
        await _visitor.SendAsync(_server.Check(best), "reading", ("text", Typed.Good(best)));
        var state = await _server.StateAsync();
        Assert.NotEmpty(state.Suspects);
        Assert.SkipWhen(state.NextBestCheckId is null, "Nothing is left that tells the suspects apart.");
        Assert.Contains($"checks/{state.NextBestCheckId}\" autofocus", (await _visitor.GetAsync(_server.Check(best))).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_check_reached_out_of_order_shows_its_set_up_in_full_when_the_machine_stands_in_another()
    {
        await _visitor.SendAsync(First, "reading", ("text", Typed.Good(_step)));
        var steps = (await _server.StateAsync()).Steps;
        var other = steps.First(step => step.SetUp != _step.SetUp && !step.SetUpChanges);
        var text = (await _visitor.GetAsync(_server.Check(other))).Text;
        Assert.Contains($"New set-up {other.SetUp.Title}", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_check_that_another_window_made_needless_can_still_be_read()
    {
        // The first bad reading after which a check beside the plan is worth most.
        var plan = (await _server.StateAsync()).Steps;
        var best = await _server.StateAsync();
        var off = _step;
        foreach (var step in plan)
        {
            off = step;
            await _visitor.SendAsync(_server.Check(off), "reading", ("text", Typed.Bad(off)));
            best = await _server.StateAsync();
            if (best.Steps.Count > plan.Count)
                break;
            await _visitor.SendAsync(_server.Check(off), "reading", ("text", Typed.Good(off)));
        }

        Assert.Equal(best.Steps[^1].Check.Id, best.NextBestCheckId);
        var address = _server.Check(best.Steps[^1]);
        var fields = Visitor.Fill((await _visitor.GetAsync(address)).HiddenFields("reading"), ("text", "0.3"));
        await _visitor.SendAsync(_server.Check(off), "reading", ("text", Typed.Good(off)));
        Assert.Null((await _server.StateAsync()).FindStep(best.NextBestCheckId!));
        Assert.Equal(HttpStatusCode.SeeOther, (await _visitor.PostAsync(address, fields)).Status);
        Assert.Equal("0.3", (await _server.StateAsync()).FindStep(best.NextBestCheckId!)!.ReadingText);
    }

    [Fact]
    public async Task A_reading_that_is_not_understood_comes_back_with_what_can_be_typed()
    {
        var page = await _visitor.SendAsync(First, "reading", ("text", "about \"three\""), ("person", "Jo"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("is not a reading. Type what the meter shows, such as 0.3, 4k7", page.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"about &quot;three&quot;\"", page.Html, StringComparison.Ordinal);
        Assert.Contains("value=\"Jo\"", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_form_sent_twice_is_one_entry()
    {
        var before = (await _server.StateAsync()).LastSequence;
        var fields = Visitor.Fill((await _visitor.GetAsync(First)).HiddenFields("reading"), ("text", "0.3"));
        await _visitor.PostAsync(First, fields);
        await _visitor.PostAsync(First, fields);
        Assert.Equal(before + 1, (await _server.StateAsync()).LastSequence);
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
        Assert.Equal(StepStatus.Open, (await _server.StepAsync(1)).Status);
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
        Assert.Contains("value=\"Zo&#xEB; &#xC5;ngstr&#xF6;m\"", (await _visitor.GetAsync(First)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_without_its_guard_enters_nothing_and_keeps_what_was_typed()
    {
        var fields = Visitor.Fill((await _visitor.GetAsync(First)).HiddenFields("reading"), ("text", "0.31"));
        fields.Remove("__RequestVerificationToken");
        var page = await _visitor.PostAsync(First, fields);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("value=\"0.31\"", page.Html, StringComparison.Ordinal);
        Assert.Equal(StepStatus.Open, (await _server.StepAsync(1)).Status);
    }

    [Fact]
    public async Task A_form_of_an_earlier_run_of_the_bench_comes_back_filled_in_and_can_be_sent_again()
    {
        Dictionary<string, string> fields;
        await using (var before = await BenchServer.StartAsync())
        using (var earlier = before.Visit())
            fields = Visitor.Fill((await earlier.GetAsync(before.Check(await before.StepAsync(1)))).HiddenFields("reading"), ("text", "0.31"));
        var page = await _visitor.PostAsync(First, fields);
        Assert.Contains("value=\"0.31\"", page.Html, StringComparison.Ordinal);
        var again = await _visitor.PostAsync(First, Visitor.Fill(page.HiddenFields("reading"), ("text", "0.31")));
        Assert.Equal(HttpStatusCode.SeeOther, again.Status);
    }
}
