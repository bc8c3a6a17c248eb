using System.Net;
using Proveout.Workshop;

namespace Proveout.Web.Tests.Access;

public sealed class SignInTests
{
    private const string Ida = "Ida Brandt";

    [Fact]
    public async Task After_the_password_the_page_that_was_asked_for_comes()
    {
        await using var bench = await Builder();
        using var visitor = bench.Visit();
        var asked = await visitor.GetAsync(bench.Record);
        Assert.Equal($"/sign-in?to={Uri.EscapeDataString(bench.Record)}", asked.Location);
        var page = await visitor.SendAsync(asked.Location!, "sign-in", ("name", "ida brandt"), ("password", OpenedBench.Password));
        Assert.Equal($"{bench.Record}#", page.Location);
        var record = await visitor.GetAsync(bench.Record);
        Assert.Equal(HttpStatusCode.OK, record.Status);
        Assert.Contains("Ida Brandt (sign out)", record.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("//elsewhere.example/")]
    [InlineData("/\\elsewhere.example/")]
    [InlineData("https://elsewhere.example/")]
    public async Task The_sign_in_sends_nobody_elsewhere(string to)
    {
        await using var bench = await Builder();
        using var visitor = bench.Visit();
        var page = await visitor.SendAsync($"/sign-in?to={Uri.EscapeDataString(to)}", "sign-in", ("name", Ida), ("password", OpenedBench.Password));
        Assert.Equal("/#", page.Location);
    }

    [Theory]
    [InlineData("Ida Brandt", "seven herons wade downstream")]
    [InlineData("Ida Brandt", "")]
    [InlineData("Nobody Known", OpenedBench.Password)]
    public async Task A_wrong_name_and_a_wrong_password_are_refused_in_the_same_words(string name, string password)
    {
        await using var bench = await Builder();
        using var visitor = bench.Visit();
        var page = await visitor.SendAsync("/sign-in", "sign-in", ("name", name), ("password", password));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("Not signed in. Name and password do not fit together.", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(visitor.Cookies.Cast<Cookie>(), cookie => cookie.Name == "session");
        if (password.Length > 0)
            Assert.DoesNotContain(password, page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_cookie_is_out_of_reach_of_scripts_and_of_other_sites()
    {
        await using var bench = await Builder();
        using var visitor = bench.Visit();
        var page = await visitor.SendAsync("/sign-in", "sign-in", ("name", Ida), ("password", OpenedBench.Password));
        var cookie = page.Header("Set-Cookie");
        Assert.Matches("session=[0-9a-f]{64};.*path=/; samesite=strict; httponly", cookie);
    }

    [Fact]
    public async Task Tries_are_slowed_down_and_the_right_password_must_wait_too()
    {
        await using var bench = await Builder();
        using var visitor = bench.Visit();
        for (var count = 0; count < 3; count++)
            await visitor.SendAsync("/sign-in", "sign-in", ("name", Ida), ("password", $"wrong {count}"));
        var early = await visitor.SendAsync("/sign-in", "sign-in", ("name", Ida), ("password", OpenedBench.Password));
        Assert.Equal(HttpStatusCode.TooManyRequests, early.Status);
        Assert.Contains("There were too many tries. Wait 2 seconds", early.Text, StringComparison.Ordinal);
        bench.Clock.Go(TimeSpan.FromSeconds(3));
        Assert.Equal(HttpStatusCode.SeeOther, (await visitor.SendAsync("/sign-in", "sign-in", ("name", Ida), ("password", OpenedBench.Password))).Status);
    }

    [Fact]
    public async Task A_join_code_lets_one_device_in_with_the_name_and_role_it_was_made_for()
    {
        await using var bench = await Builder();
        var code = bench.People.Invite("Tove Lund", AccessRole.Checker, devices: 1).Value!;
        using var visitor = bench.Visit();
        Assert.Contains($"value=\"{code}\"", (await visitor.GetAsync($"/join?code={code}")).Html, StringComparison.Ordinal);
        var page = await visitor.SendAsync("/join", "join", ("code", code.ToLowerInvariant().Replace("-", " ", StringComparison.Ordinal)));
        Assert.Equal(HttpStatusCode.SeeOther, page.Status);
        Assert.Contains("Tove Lund You are a checker here", (await visitor.GetAsync("/devices")).Text, StringComparison.Ordinal);
        using var second = bench.Visit();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await second.SendAsync("/join", "join", ("code", code))).Status);
    }

    [Fact]
    public async Task A_join_code_ends_after_ten_minutes()
    {
        await using var bench = await Builder();
        var code = bench.People.Invite("Tove Lund", AccessRole.Checker, devices: 1).Value!;
        bench.Clock.Go(TimeSpan.FromMinutes(10));
        using var visitor = bench.Visit();
        var page = await visitor.SendAsync("/join", "join", ("code", code));
        Assert.Contains("This code opens nothing.", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_password_code_or_token_stands_in_the_log_or_in_the_file()
    {
        await using var bench = await Builder();
        var code = bench.People.Invite("Tove Lund", AccessRole.Checker, devices: 2).Value!;
        using var visitor = await bench.VisitAsync(Ida);
        await visitor.SendAsync("/join", "join", ("code", code));
        await visitor.SendAsync("/sign-in", "sign-in", ("name", OpenedBench.Password), ("password", "another wrong secret"));
        await visitor.GetAsync("/nothing?password=another+wrong+secret");
        var token = visitor.Cookies.Cast<Cookie>().Single(cookie => cookie.Name == "session").Value;
        Assert.Contains("Ida Brandt (builder) came in by password", bench.Log.Text, StringComparison.Ordinal);
        Assert.Contains("for a name not known here was refused", bench.Log.Text, StringComparison.Ordinal);
        foreach (var text in new[] { bench.Log.Text, await File.ReadAllTextAsync(bench.Store.Place) })
            foreach (var secret in new[] { OpenedBench.Password, "another wrong secret", code, code.Replace("-", "", StringComparison.Ordinal), token })
                Assert.DoesNotContain(secret, text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task A_form_from_elsewhere_signs_nobody_in_or_out()
    {
        await using var bench = await Builder();
        using var visitor = await bench.VisitAsync(Ida);
        await visitor.PostAsync("/sign-out", [new("form", "sign-out"), new("key", Guid.NewGuid().ToString())]);
        Assert.Equal(HttpStatusCode.OK, (await visitor.GetAsync("/")).Status);
        using var stranger = bench.Visit();
        var page = await stranger.PostAsync("/sign-in", [new("name", Ida), new("password", OpenedBench.Password), new("key", Guid.NewGuid().ToString())]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
    }

    private static async Task<OpenedBench> Builder()
    {
        var bench = await OpenedBench.StartAsync();
        bench.Add(Ida, AccessRole.Builder);
        return bench;
    }
}
