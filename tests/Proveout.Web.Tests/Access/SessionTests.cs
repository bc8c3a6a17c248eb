using System.Net;
using Proveout.Web.Tests.Samples;
using Proveout.Workshop;

namespace Proveout.Web.Tests.Access;

public sealed class SessionTests
{
    private const string Ida = "Ida Brandt";
    private const string Tove = "Tove Lund";

    [Fact]
    public async Task A_session_outlives_a_restart_of_the_bench()
    {
        await using var bench = await Start();
        using var before = await bench.VisitAsync(Ida);
        await bench.RestartAsync();
        using var after = bench.Visit();
        after.Client.DefaultRequestHeaders.Add("Cookie", $"session={Token(before)}");
        Assert.Equal(HttpStatusCode.OK, (await after.GetAsync("/")).Status);
    }

    [Fact]
    public async Task A_file_of_people_that_cannot_be_read_lets_nobody_in_with_a_sentence_and_no_trace()
    {
        await using var bench = await Start();
        using var visitor = await bench.VisitAsync(Ida);
        await File.WriteAllTextAsync(bench.Store.Place, "broken");
        foreach (var address in new[] { "/", "/sign-in", "/join", "/devices" })
        {
            var page = await visitor.GetAsync(address);
            Assert.Equal(HttpStatusCode.ServiceUnavailable, page.Status);
            Assert.Contains("it lets nobody in", page.Text, StringComparison.Ordinal);
        }

        Assert.Equal(HttpStatusCode.OK, (await visitor.GetAsync(Style(await visitor.GetAsync("/")))).Status);
        Assert.Contains("Nobody is let in: who may come in cannot be looked up", bench.Log.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", bench.Log.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("unhandled", bench.Log.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_session_that_nobody_uses_ends_after_two_hours()
    {
        await using var bench = await Start();
        using var visitor = await bench.VisitAsync(Ida);
        bench.Clock.Go(TimeSpan.FromMinutes(119));
        Assert.Equal(HttpStatusCode.OK, (await visitor.GetAsync("/")).Status);
        bench.Clock.Go(TimeSpan.FromMinutes(119));
        Assert.Equal(HttpStatusCode.OK, (await visitor.GetAsync("/")).Status);
        bench.Clock.Go(TimeSpan.FromMinutes(120));
        Assert.Equal(HttpStatusCode.SeeOther, (await visitor.GetAsync("/")).Status);
    }

    [Fact]
    public async Task A_session_ends_after_twelve_hours_although_it_is_used()
    {
        await using var bench = await Start();
        using var visitor = await bench.VisitAsync(Ida);
        for (var hour = 1; hour < 12; hour++)
        {
            bench.Clock.Go(TimeSpan.FromHours(1));
            Assert.Equal(HttpStatusCode.OK, (await visitor.GetAsync("/")).Status);
        }

        bench.Clock.Go(TimeSpan.FromHours(1));
        Assert.Equal(HttpStatusCode.SeeOther, (await visitor.GetAsync("/")).Status);
    }

    [Fact]
    public async Task Who_signs_out_is_out_on_that_device_alone()
    {
        await using var bench = await Start();
        using var phone = await bench.VisitAsync(Ida);
        using var desk = await bench.VisitAsync(Ida);
        await phone.PostAsync("/sign-out", (await phone.GetAsync("/devices")).HiddenFields("sign-out"));
        Assert.Equal(HttpStatusCode.OK, (await desk.GetAsync("/")).Status);
        phone.Client.DefaultRequestHeaders.Add("Cookie", "session=0");
        Assert.Equal(HttpStatusCode.SeeOther, (await phone.GetAsync("/")).Status);
    }

    [Fact]
    public async Task A_lost_device_is_signed_out_from_another()
    {
        await using var bench = await Start();
        using var lost = await bench.VisitAsync(Ida);
        using var kept = await bench.VisitAsync(Ida);
        await kept.SendAsync("/devices", "devices", ("device", "others"));
        Assert.Equal(HttpStatusCode.SeeOther, (await lost.GetAsync("/")).Status);
        Assert.Equal(HttpStatusCode.OK, (await kept.GetAsync("/")).Status);
    }

    [Fact]
    public async Task Nobody_signs_out_a_device_of_somebody_else()
    {
        await using var bench = await Start();
        using var ida = await bench.VisitAsync(Ida);
        using var tove = await bench.VisitAsync(Tove);
        var session = bench.Store.Read().Sessions.Single(session => bench.Store.Read().Find(session.Person)!.Name == Ida).Id;
        await tove.SendAsync("/devices", "devices", ("device", session.ToString()));
        Assert.Equal(HttpStatusCode.OK, (await ida.GetAsync("/")).Status);
        Assert.DoesNotContain(Ida, (await tove.GetAsync("/devices")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_person_removed_is_out_at_once_and_stays_out_when_the_name_is_given_again()
    {
        await using var bench = await Start();
        using var visitor = await bench.VisitAsync(Ida);
        bench.People.Remove(Ida);
        Assert.Equal(HttpStatusCode.SeeOther, (await visitor.GetAsync("/")).Status);
        bench.Add(Ida, AccessRole.Builder);
        Assert.Equal(HttpStatusCode.SeeOther, (await visitor.GetAsync("/")).Status);
    }

    [Fact]
    public async Task A_new_password_signs_the_person_out_everywhere()
    {
        await using var bench = await Start();
        using var visitor = await bench.VisitAsync(Ida);
        Assert.NotNull(bench.People.SetPassword(Ida, "nine lanterns above the ford").Value);
        Assert.Equal(HttpStatusCode.SeeOther, (await visitor.GetAsync("/")).Status);
    }

    [Fact]
    public async Task Another_role_counts_from_the_next_page_on()
    {
        await using var bench = await Start();
        using var visitor = await bench.VisitAsync(Ida);
        bench.People.SetRole(Ida, AccessRole.Reader);
        Assert.Equal(HttpStatusCode.Forbidden, (await visitor.PostAsync("/", [])).Status);
    }

    [Fact]
    public async Task The_name_on_an_entry_is_the_signed_in_one_whatever_the_form_says()
    {
        await using var bench = await Start();
        using var visitor = await bench.VisitAsync(Ida);
        await visitor.SendAsync(bench.Record, "deviation", ("note", "A longer lead is fitted."), ("person", Tove));
        await visitor.SendAsync("/", "start", ("machine", SampleBench.Machine), ("serial", "oven-8"), ("builder", Tove));
        Assert.Contains(Ida, (await bench.Bench.StateAsync(bench.Build.Id, default))!.Deviations.Select(note => note.Person));
        Assert.Equal(Ida, (await bench.Bench.BuildsAsync(default)).Single(build => build.Serial == "oven-8").Builder);
        Assert.DoesNotContain("name=\"person\"", (await visitor.GetAsync(bench.Record)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_checker_signs_off_what_others_entered_in_the_role_the_bench_gave()
    {
        await using var bench = await Start();
        using var visitor = await bench.VisitAsync(Tove);
        var page = await visitor.SignOffAsync(bench.Record, ("statement", "I went through it."), ("person", Ida), ("role", "builder"));
        Assert.Equal(HttpStatusCode.SeeOther, page.Status);
        var signed = Assert.Single((await bench.Bench.StateAsync(bench.Build.Id, default))!.SignOffs);
        Assert.Equal((Tove, "checker"), (signed.Person, signed.Role));
    }

    [Fact]
    public async Task Who_entered_something_cannot_sign_it_off_as_checker_even_after_a_change_of_role()
    {
        await using var bench = await Start();
        using var visitor = await bench.VisitAsync(Ida);
        await visitor.SendAsync(bench.Record, "deviation", ("note", "A longer lead is fitted."));
        bench.People.SetRole(Ida, AccessRole.Checker);
        var page = await visitor.SignOffAsync(bench.Record, ("statement", "I went through it."));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("Ida Brandt made entries in this record, so Ida Brandt cannot sign it off as its checker.", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Entries_after_the_second_persons_signature_are_counted()
    {
        await using var bench = await Start();
        using var checker = await bench.VisitAsync(Tove);
        using var builder = await bench.VisitAsync(Ida);
        await checker.SignOffAsync(bench.Record, ("statement", "I went through it."));
        Assert.Equal(0, (await bench.Bench.StateAsync(bench.Build.Id, default))!.SinceChecked);
        await builder.SendAsync(bench.Record, "deviation", ("note", "A longer lead is fitted."));
        Assert.Contains("1 entry was made since a second person signed last.", (await builder.GetAsync(bench.Record)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_of_somebody_else_is_not_taken()
    {
        await using var bench = await Start();
        using var ida = await bench.VisitAsync(Ida);
        using var other = await bench.VisitAsync(Ida);
        var fields = Visitor.Fill((await ida.GetAsync(bench.Record)).HiddenFields("deviation"), ("note", "A longer lead is fitted."));
        var refused = await other.PostAsync(bench.Record, fields);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains("A longer lead is fitted.", refused.Html, StringComparison.Ordinal);
        Assert.DoesNotContain(await NotesAsync(bench), note => note.Contains("longer lead", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_form_sent_after_the_session_ended_is_kept_from_the_record_and_sent_again_after_signing_in()
    {
        await using var bench = await Start();
        using var visitor = await bench.VisitAsync(Ida);
        var fields = Visitor.Fill((await visitor.GetAsync(bench.Record)).HiddenFields("deviation"), ("note", "A longer lead is fitted."));
        bench.Clock.Go(SessionTimes.Idle);
        var late = await visitor.PostAsync(bench.Record, fields);
        Assert.Equal(HttpStatusCode.Unauthorized, late.Status);
        Assert.Contains("Nothing was entered, because you are not signed in any more.", late.Text, StringComparison.Ordinal);
        await visitor.SendAsync("/sign-in", "sign-in", ("name", Ida), ("password", OpenedBench.Password));
        var again = await visitor.PostAsync(bench.Record, fields);
        await visitor.PostAsync(bench.Record, Visitor.Fill(again.HiddenFields("deviation"), ("note", "A longer lead is fitted.")));
        Assert.Single(await NotesAsync(bench), "A longer lead is fitted.");
    }

    private static async Task<string[]> NotesAsync(OpenedBench bench) => [.. (await bench.Bench.StateAsync(bench.Build.Id, default))!.Deviations.Select(note => note.Text)];

    private static string Token(Visitor visitor) => visitor.Cookies.Cast<Cookie>().Single(cookie => cookie.Name == "session").Value;

    private static async Task<OpenedBench> Start()
    {
        var bench = await OpenedBench.StartAsync();
        bench.Add(Ida, AccessRole.Builder);
        bench.Add(Tove, AccessRole.Checker);
        return bench;
    }

    private static string Style(Page page) => System.Text.RegularExpressions.Regex.Match(page.Html, "href=\"([^\"]+\\.css[^\"]*)\"").Groups[1].Value;
}
