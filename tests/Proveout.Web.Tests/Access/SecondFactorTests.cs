using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using Proveout.Workshop;

namespace Proveout.Web.Tests.Access;

public sealed class SecondFactorTests
{
    private const string Ida = "Ida Brandt";

    [Fact]
    public async Task Whoever_put_it_on_comes_in_with_password_and_code_and_not_with_one_of_them()
    {
        await using var bench = await StartAsync();
        var (key, _) = await PutOnAsync(bench);
        using var visitor = bench.Visit();
        bench.Clock.Go(OneTimeCodes.Step);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await SignInAsync(visitor, OpenedBench.Password, "")).Status);
        bench.Clock.Go(TimeSpan.FromMinutes(5));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await SignInAsync(visitor, "seven herons wade downstream", CodeOf(key, bench))).Status);
        bench.Clock.Go(TimeSpan.FromMinutes(5));
        Assert.Equal(HttpStatusCode.SeeOther, (await SignInAsync(visitor, OpenedBench.Password, CodeOf(key, bench))).Status);
    }

    [Fact]
    public async Task A_code_is_taken_once()
    {
        await using var bench = await StartAsync();
        var (key, _) = await PutOnAsync(bench);
        bench.Clock.Go(TimeSpan.FromMinutes(5));
        var code = CodeOf(key, bench);
        using var first = bench.Visit();
        Assert.Equal(HttpStatusCode.SeeOther, (await SignInAsync(first, OpenedBench.Password, code)).Status);
        using var second = bench.Visit();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await SignInAsync(second, OpenedBench.Password, code)).Status);
    }

    [Fact]
    public async Task The_code_that_put_it_on_opens_nothing_more()
    {
        await using var bench = await StartAsync();
        var (key, _) = await PutOnAsync(bench);
        using var visitor = bench.Visit();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await SignInAsync(visitor, OpenedBench.Password, CodeOf(key, bench))).Status);
    }

    [Fact]
    public async Task Of_one_code_sent_by_two_at_the_same_moment_one_is_let_in()
    {
        await using var bench = await StartAsync();
        var (key, _) = await PutOnAsync(bench);
        bench.Clock.Go(TimeSpan.FromMinutes(5));
        var code = CodeOf(key, bench);
        Visitor[] visitors = [bench.Visit(), bench.Visit()];
        var answers = await Task.WhenAll(visitors.Select(visitor => SignInAsync(visitor, OpenedBench.Password, code)));
        Assert.Single(answers, answer => answer.Status == HttpStatusCode.SeeOther);
        foreach (var visitor in visitors)
            visitor.Dispose();
    }

    [Fact]
    public async Task Codes_are_tried_as_slowly_as_passwords()
    {
        await using var bench = await StartAsync();
        var (key, _) = await PutOnAsync(bench);
        bench.Clock.Go(TimeSpan.FromMinutes(5));
        using var visitor = bench.Visit();
        for (var count = 0; count < 3; count++)
            await SignInAsync(visitor, OpenedBench.Password, "000000");
        var early = await SignInAsync(visitor, OpenedBench.Password, CodeOf(key, bench));
        Assert.Equal(HttpStatusCode.TooManyRequests, early.Status);
    }

    [Fact]
    public async Task A_wrong_code_and_a_wrong_password_are_refused_in_the_same_words()
    {
        await using var bench = await StartAsync();
        await PutOnAsync(bench);
        using var visitor = bench.Visit();
        var wrongCode = await SignInAsync(visitor, OpenedBench.Password, "000000");
        var wrongPassword = await SignInAsync(visitor, "seven herons wade downstream", "000000");
        Assert.Contains("Name, password and code do not fit together.", wrongCode.Text, StringComparison.Ordinal);
        Assert.Equal(wrongCode.Text, wrongPassword.Text);
    }

    [Fact]
    public async Task After_a_hundred_wrong_codes_with_the_right_password_only_a_code_on_paper_opens()
    {
        await using var bench = await StartAsync();
        var (key, paper) = await PutOnAsync(bench);
        bench.Store.Change(book => (book.With(book.Find(Ida)! with { Second = book.Find(Ida)!.Second! with { Misses = SecondFactor.MostMisses - 1 } }), true));
        bench.Clock.Go(TimeSpan.FromMinutes(5));
        using var visitor = bench.Visit();
        await SignInAsync(visitor, OpenedBench.Password, "000000");
        Assert.Equal(AccessEvent.Guessed, bench.People.Notes()[0].Event);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await SignInAsync(visitor, OpenedBench.Password, CodeOf(key, bench))).Status);
        Assert.Equal(HttpStatusCode.SeeOther, (await SignInAsync(visitor, OpenedBench.Password, paper[0])).Status);
        bench.Clock.Go(TimeSpan.FromMinutes(5));
        Assert.Equal(HttpStatusCode.SeeOther, (await SignInAsync(visitor, OpenedBench.Password, CodeOf(key, bench))).Status);
    }

    [Fact]
    public async Task A_wrong_password_with_a_wrong_code_counts_for_nothing_that_locks_the_owner_out()
    {
        await using var bench = await StartAsync();
        await PutOnAsync(bench);
        using var visitor = bench.Visit();
        await SignInAsync(visitor, "seven herons wade downstream", "000000");
        await SignInAsync(visitor, OpenedBench.Password, "");
        Assert.Equal(0, bench.Store.Read().Find(Ida)!.Second!.Misses);
        await SignInAsync(visitor, OpenedBench.Password, "000000");
        Assert.Equal(1, bench.Store.Read().Find(Ida)!.Second!.Misses);
    }

    [Fact]
    public async Task A_code_on_paper_opens_once_and_is_counted()
    {
        await using var bench = await StartAsync();
        var (_, paper) = await PutOnAsync(bench);
        Assert.Equal(10, paper.Distinct().Count());
        using var visitor = bench.Visit();
        Assert.Equal(HttpStatusCode.SeeOther, (await SignInAsync(visitor, OpenedBench.Password, paper[9].ToLowerInvariant().Replace("-", " ", StringComparison.Ordinal))).Status);
        var page = await visitor.GetAsync("/second-factor");
        Assert.Contains("9 codes on paper are left.", page.Text, StringComparison.Ordinal);
        Assert.Contains("a code on paper was used", page.Text, StringComparison.Ordinal);
        using var second = bench.Visit();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await SignInAsync(second, OpenedBench.Password, paper[9])).Status);
    }

    [Fact]
    public async Task New_codes_on_paper_take_the_place_of_the_old_ones()
    {
        await using var bench = await StartAsync();
        using var visitor = await bench.VisitAsync(Ida);
        var (_, paper) = await PutOnAsync(bench, visitor);
        var page = await visitor.SendAsync("/second-factor", "codes", ("password", OpenedBench.Password), ("code", paper[0]));
        var fresh = PaperOf(page);
        Assert.Empty(fresh.Intersect(paper));
        using var other = bench.Visit();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await SignInAsync(other, OpenedBench.Password, paper[1])).Status);
        Assert.Equal(HttpStatusCode.SeeOther, (await SignInAsync(other, OpenedBench.Password, fresh[1])).Status);
    }

    [Fact]
    public async Task A_join_code_does_not_stand_for_the_second_factor()
    {
        await using var bench = await StartAsync();
        var (key, _) = await PutOnAsync(bench);
        bench.Clock.Go(TimeSpan.FromMinutes(5));
        var join = bench.People.Invite(Ida, null, devices: 1).Value!;
        using var visitor = bench.Visit();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await visitor.SendAsync("/join", "join", ("code", join), ("second", ""))).Status);
        Assert.Equal(HttpStatusCode.SeeOther, (await visitor.SendAsync("/join", "join", ("code", join), ("second", CodeOf(key, bench)))).Status);
    }

    [Fact]
    public async Task Wrong_codes_beside_a_join_code_count_like_those_beside_a_password()
    {
        await using var bench = await StartAsync();
        var (key, _) = await PutOnAsync(bench);
        bench.Store.Change(book => (book.With(book.Find(Ida)! with { Second = book.Find(Ida)!.Second! with { Misses = SecondFactor.MostMisses - 2 } }), true));
        bench.Clock.Go(TimeSpan.FromMinutes(5));
        var join = bench.People.Invite(Ida, null, devices: 1).Value!;
        using var visitor = bench.Visit();
        await visitor.SendAsync("/join", "join", ("code", "AAAAA-AAAAA"), ("second", "000000"));
        await visitor.SendAsync("/join", "join", ("code", join), ("second", ""));
        await visitor.SendAsync("/join", "join", ("code", join), ("second", "000000"));
        Assert.Equal(SecondFactor.MostMisses - 1, bench.Store.Read().Find(Ida)!.Second!.Misses);
        bench.Clock.Go(TimeSpan.FromMinutes(5));
        await visitor.SendAsync("/join", "join", ("code", join), ("second", "000000"));
        Assert.Equal(AccessEvent.Guessed, bench.People.Notes()[0].Event);
        bench.Clock.Go(TimeSpan.FromMinutes(4));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await visitor.SendAsync("/join", "join", ("code", join), ("second", CodeOf(key, bench)))).Status);
    }

    [Fact]
    public async Task It_is_not_on_before_a_first_code_and_a_key_that_waited_ten_minutes_is_forgotten()
    {
        await using var bench = await StartAsync();
        using var visitor = await bench.VisitAsync(Ida);
        var begun = await visitor.SendAsync("/second-factor", "begin", ("password", OpenedBench.Password));
        using var other = await bench.VisitAsync(Ida);
        bench.Clock.Go(SecondFactorDesk.Patience);
        var late = await visitor.PostAsync("/second-factor", Visitor.Fill(begun.HiddenFields("confirm"), ("code", CodeOf(KeyOf(begun), bench))));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, late.Status);
        Assert.Contains("No key waits for its first code.", late.Text, StringComparison.Ordinal);
        Assert.Contains("Off. Your password alone lets you in.", (await visitor.GetAsync("/second-factor")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_first_code_that_is_wrong_puts_nothing_on_and_may_be_typed_again()
    {
        await using var bench = await StartAsync();
        using var visitor = await bench.VisitAsync(Ida);
        var begun = await visitor.SendAsync("/second-factor", "begin", ("password", OpenedBench.Password));
        var wrong = await visitor.PostAsync("/second-factor", Visitor.Fill(begun.HiddenFields("confirm"), ("code", "000000")));
        Assert.Contains("It is not on. This is not the code of now.", wrong.Text, StringComparison.Ordinal);
        var right = await visitor.PostAsync("/second-factor", Visitor.Fill(wrong.HiddenFields("confirm"), ("code", CodeOf(KeyOf(begun), bench))));
        Assert.Equal(10, PaperOf(right).Length);
    }

    [Fact]
    public async Task To_begin_and_to_take_it_off_the_password_is_asked_for_again()
    {
        await using var bench = await StartAsync();
        using var visitor = await bench.VisitAsync(Ida);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await visitor.SendAsync("/second-factor", "begin", ("password", "wrong"))).Status);
        var (key, paper) = await PutOnAsync(bench, visitor);
        bench.Clock.Go(TimeSpan.FromMinutes(5));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await visitor.SendAsync("/second-factor", "off", ("password", "wrong"), ("code", paper[0]))).Status);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await visitor.SendAsync("/second-factor", "off", ("password", OpenedBench.Password), ("code", ""))).Status);
        Assert.NotNull(bench.Store.Read().Find(Ida)!.Second);
        Assert.Equal(HttpStatusCode.OK, (await visitor.SendAsync("/second-factor", "off", ("password", OpenedBench.Password), ("code", CodeOf(key, bench)))).Status);
        Assert.Null(bench.Store.Read().Find(Ida)!.Second);
        using var alone = await bench.VisitAsync(Ida);
    }

    [Fact]
    public async Task Other_devices_are_signed_out_when_it_is_put_on()
    {
        await using var bench = await StartAsync();
        using var other = await bench.VisitAsync(Ida);
        using var visitor = await bench.VisitAsync(Ida);
        await PutOnAsync(bench, visitor);
        Assert.Equal(HttpStatusCode.SeeOther, (await other.GetAsync("/")).Status);
        Assert.Equal(HttpStatusCode.OK, (await visitor.GetAsync("/")).Status);
    }

    [Fact]
    public async Task Whoever_runs_the_bench_takes_it_off_and_the_owner_sees_that_it_was_done()
    {
        await using var bench = await StartAsync();
        await PutOnAsync(bench);
        Assert.NotNull(bench.People.TakeSecondFactorOff(Ida).Value);
        Assert.Equal([AccessEvent.TakenOffAtBench, AccessEvent.PutOn], bench.People.Notes().Select(note => note.Event));
        using var visitor = await bench.VisitAsync(Ida);
        Assert.Contains("taken off on the bench's own computer", (await visitor.GetAsync("/second-factor")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Key_and_codes_are_shown_once_kept_by_no_browser_and_stand_in_no_log()
    {
        await using var bench = await StartAsync();
        using var visitor = await bench.VisitAsync(Ida);
        var begun = await visitor.SendAsync("/second-factor", "begin", ("password", OpenedBench.Password));
        var key = KeyOf(begun);
        Assert.Equal("no-store", begun.Header("Cache-Control"));
        Assert.DoesNotContain(key.Text, (await visitor.GetAsync("/second-factor")).Html, StringComparison.Ordinal);
        var on = await visitor.PostAsync("/second-factor", Visitor.Fill(begun.HiddenFields("confirm"), ("code", CodeOf(key, bench))));
        Assert.Equal("no-store", on.Header("Cache-Control"));
        var paper = PaperOf(on);
        foreach (var text in new[] { bench.Log.Text, (await visitor.GetAsync("/second-factor")).Html })
            foreach (var secret in paper.Append(key.Text).Append(key.Grouped))
                Assert.DoesNotContain(secret, text, StringComparison.Ordinal);
        var file = await File.ReadAllTextAsync(bench.Store.Place);
        Assert.DoesNotContain(paper, code => file.Contains(code.Replace("-", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase));
        Assert.Contains("\"proveout-access 2\"", file, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_square_code_that_is_drawn_is_that_of_the_address()
    {
        await using var bench = await StartAsync();
        using var visitor = await bench.VisitAsync(Ida);
        var page = await visitor.SendAsync("/second-factor", "begin", ("password", OpenedBench.Password));
        var square = OneTimeKey.SquareOf(WebUtility.HtmlDecode(Regex.Match(page.Html, "href=\"(otpauth:[^\"]+)\"").Groups[1].Value));
        var drawn = Regex.Matches(page.Html, "M(\\d+) (\\d+)h1v1h-1z").Select(match => (int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture), int.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture)));
        Assert.Equal(square.SelectMany((row, down) => row.Select((dark, across) => (dark, across, down))).Where(module => module.dark).Select(module => (module.across, module.down)), drawn);
        Assert.Contains($"viewBox=\"0 0 {square.Count} {square.Count}\"", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_has_no_password_is_told_to_get_one_first()
    {
        await using var bench = await StartAsync();
        var join = bench.People.Invite("Tove Lund", AccessRole.Checker, devices: 1).Value!;
        using var visitor = bench.Visit();
        await visitor.SendAsync("/join", "join", ("code", join));
        Assert.Contains("A second factor needs a password first", (await visitor.GetAsync("/second-factor")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_way_in_has_a_field_for_codes_only_where_somebody_has_a_second_factor()
    {
        await using var bench = await StartAsync();
        using var visitor = bench.Visit();
        Assert.DoesNotContain("name=\"second\"", (await visitor.GetAsync("/sign-in")).Html, StringComparison.Ordinal);
        await PutOnAsync(bench);
        Assert.Contains("name=\"second\"", (await visitor.GetAsync("/sign-in")).Html, StringComparison.Ordinal);
        bench.Add("Tove Lund", AccessRole.Checker);
        using var without = await bench.VisitAsync("Tove Lund");
    }

    private static async Task<(OneTimeKey Key, string[] Paper)> PutOnAsync(OpenedBench bench)
    {
        using var visitor = await bench.VisitAsync(Ida);
        return await PutOnAsync(bench, visitor);
    }

    private static async Task<(OneTimeKey Key, string[] Paper)> PutOnAsync(OpenedBench bench, Visitor visitor)
    {
        var begun = await visitor.SendAsync("/second-factor", "begin", ("password", OpenedBench.Password));
        var key = KeyOf(begun);
        var on = await visitor.PostAsync("/second-factor", Visitor.Fill(begun.HiddenFields("confirm"), ("code", CodeOf(key, bench))));
        Assert.Equal(HttpStatusCode.OK, on.Status);
        return (key, PaperOf(on));
    }

    private static Task<Page> SignInAsync(Visitor visitor, string password, string code) =>
        visitor.SendAsync("/sign-in", "sign-in", ("name", Ida), ("password", password), ("second", code));

    private static OneTimeKey KeyOf(Page page) => new(Regex.Match(page.Html, "secret=([A-Z2-7]{32})&").Groups[1].Value);

    private static string CodeOf(OneTimeKey key, OpenedBench bench) => OneTimeCodes.Of(key.Bytes(), OneTimeCodes.StepOf(bench.Clock.GetUtcNow()));

    private static string[] PaperOf(Page page) => [.. Regex.Matches(page.Html, "<code>(\\d+-[A-Z2-9]{5}-[A-Z2-9]{5})</code>").Select(match => match.Groups[1].Value)];

    private static async Task<OpenedBench> StartAsync()
    {
        var bench = await OpenedBench.StartAsync();
        bench.Add(Ida, AccessRole.Builder);
        return bench;
    }
}
