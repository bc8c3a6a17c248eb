using System.Text.RegularExpressions;

namespace Proveout.Cli.Tests;

public sealed class PeopleTests(TemporaryFolder folder) : IClassFixture<TemporaryFolder>
{
    private const string Password = "seven herons wade upstream";

    [Fact]
    public async Task Who_is_added_is_listed_and_who_is_removed_is_not()
    {
        var journal = folder.At("people.db");
        var added = await Run.WithInputAsync(Password + "\n", "people", "add", "Mara Lindt", "--role", "builder", "--journal", journal);
        Assert.Equal((0, "Mara Lindt may sign in as a builder.\n", ""), (added.Exit, added.Output.ReplaceLineEndings("\n"), added.Error));
        await Run.OfAsync("people", "role", "mara lindt", "checker", "--journal", journal);
        Assert.Matches(@"Mara Lindt\s+checker\s+password or join code\s+no\s+0", (await Run.OfAsync("people", "list", "--journal", journal)).Output);
        Assert.Equal(0, (await Run.OfAsync("people", "remove", "Mara Lindt", "--journal", journal)).Exit);
        Assert.DoesNotContain("Mara", (await Run.OfAsync("people", "list", "--journal", journal)).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fourteen chars", "15 at least")]
    [InlineData("123456789012345", "others try first")]
    [InlineData("maralindtmaralindt", "others try first")]
    [InlineData("", "15 at least")]
    public async Task A_password_that_is_soon_guessed_is_refused_and_not_shown(string password, string words)
    {
        var run = await Run.WithInputAsync(password + "\n", "people", "add", "Mara Lindt", "--role", "builder", "--journal", folder.At("weak.db"));
        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Contains(words, run.Error, StringComparison.Ordinal);
        if (password.Length > 0)
            Assert.DoesNotContain(password, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_file_of_people_is_readable_by_its_owner_alone_and_holds_no_password()
    {
        var journal = folder.At("private.db");
        await Run.WithInputAsync(Password + "\n", "people", "add", "Mara Lindt", "--role", "builder", "--journal", journal);
        Assert.DoesNotContain(Password, await File.ReadAllTextAsync(journal + ".access"), StringComparison.Ordinal);
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(journal + ".access"));
    }

    [Fact]
    public async Task A_join_code_is_shown_with_a_square_code_that_holds_its_address()
    {
        var run = await Run.OfAsync("people", "join", "Tove Lund", "--role", "checker", "--at", "https://bench.local:8015/", "--journal", folder.At("join.db"));
        var code = Regex.Match(run.Output, "Code: ([A-Z2-9]{5}-[A-Z2-9]{5})").Groups[1].Value;
        Assert.Contains($"https://bench.local:8015/join?code={code}", run.Output, StringComparison.Ordinal);
        Assert.Contains("▀", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain(code.Replace("-", "", StringComparison.Ordinal), await File.ReadAllTextAsync(folder.At("join.db") + ".access"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_second_factor_that_nobody_put_on_cannot_be_taken_off()
    {
        var journal = folder.At("one-factor.db");
        await Run.WithInputAsync(Password + "\n", "people", "add", "Mara Lindt", "--role", "builder", "--journal", journal);
        var run = await Run.OfAsync("people", "second-factor-off", "Mara Lindt", "--journal", journal);
        Assert.Equal(2, run.Exit);
        Assert.Contains("Mara Lindt has no second factor.", run.Error, StringComparison.Ordinal);
        Assert.Equal("Nothing yet.\n", (await Run.OfAsync("people", "access-notes", "--journal", journal)).Output.ReplaceLineEndings("\n"));
    }

    [Theory]
    [InlineData("people", "second-factor-off", "Nobody Known")]
    [InlineData("people", "join", "Nobody Known")]
    [InlineData("people", "remove", "Nobody Known")]
    [InlineData("people", "role", "Nobody Known", "reader")]
    public async Task A_name_that_nobody_has_is_refused(params string[] words)
    {
        var run = await Run.OfAsync([.. words, "--journal", folder.At("none.db")]);
        Assert.Equal(2, run.Exit);
        Assert.Contains("Nobody here is called Nobody Known.", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("serve", "--address", "0.0.0.0")]
    [InlineData("serve", "--certificate-key", "key.pem")]
    [InlineData("serve", "--address", "bench.local")]
    [InlineData("serve", "--name", "*")]
    [InlineData("serve", "--proxy", "everybody")]
    [InlineData("people", "add", "Mara Lindt", "--role", "owner")]
    [InlineData("people", "join", "Mara Lindt", "--devices", "6")]
    public async Task An_opening_that_does_not_fit_together_is_refused(params string[] words)
    {
        var run = await Run.OfAsync([.. words, "--journal", folder.At("refused.db")]);
        Assert.Equal((2, ""), (run.Exit, run.Output));
    }

    [Fact]
    public async Task A_damaged_file_of_people_lets_nobody_in()
    {
        var journal = folder.At("damaged.db");
        await File.WriteAllTextAsync(journal + ".access", "{ \"Format\": \"proveout-access 1\" }");
        var run = await Run.OfAsync("people", "list", "--journal", journal);
        Assert.Equal(2, run.Exit);
        Assert.Contains("nobody is let in", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_opened_bench_warns_that_it_is_readable_and_asks_who_comes_in()
    {
        using var program = ProgramProcess.Start("serve", "pennywort", "--address", "0.0.0.0", "--name", "bench.example", "--journal", folder.At("open.db"));
        var address = new Uri((await program.Output.ReadLineAsync())!["Bench: ".Length..]);
        using var handler = new HttpClientHandler { AllowAutoRedirect = false };
        using var client = new HttpClient(handler);
        client.DefaultRequestHeaders.Host = "bench.example";
        var page = await client.GetAsync(new Uri($"http://127.0.0.1:{address.Port}/"));
        client.DefaultRequestHeaders.Host = "elsewhere.example";
        var foreign = await client.GetAsync(new Uri($"http://127.0.0.1:{address.Port}/"));
        program.Interrupt();

        Assert.Equal("bench.example", address.Host);
        Assert.Equal("/sign-in", page.Headers.Location?.OriginalString);
        Assert.Equal(System.Net.HttpStatusCode.BadRequest, foreign.StatusCode);
        Assert.Equal(130, await program.ExitAsync());
        Assert.StartsWith("Caution: without a certificate everybody on the network can read", await program.Error.ReadToEndAsync(), StringComparison.Ordinal);
    }
}
