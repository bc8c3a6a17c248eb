namespace Proveout.Cli.Tests;

public sealed class BenchTests(TemporaryFolder folder) : IClassFixture<TemporaryFolder>
{
    [Fact]
    public async Task The_walk_shows_cautions_first_judges_readings_and_names_suspects_and_the_next_check()
    {
        var run = await BenchAsync("B-1", "OL\nlist\nquit\n");

        Assert.Equal((1, ""), (run.Exit, run.Complaints));
        InOrder(run.Output, "CAUTION", "Set-up: All plugs apart", "Check 1 of", "Should read", "FAIL: OL", "What explains the readings", "Check 2 of", "1 fail");
    }

    [Fact]
    public async Task A_walk_goes_on_where_it_ended()
    {
        await BenchAsync("B-2", "0.2\nskip no access behind the panel\nquit\n");

        var run = await Run.WithInputAsync("quit\n", "bench", "B-2", "--journal", folder.At("journal.db"));

        Assert.Equal(0, run.Exit);
        Assert.Matches("2 of [0-9]+ checks done", run.Output);
        Assert.Contains("Check 3 of", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Check 2 of", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_reading_can_be_corrected_after_going_back()
    {
        var run = await BenchAsync("B-3", "OL\nback\n0.2\nquit\n");

        Assert.Equal(0, run.Exit);
        InOrder(run.Output, "FAIL: OL", "It read OL (fail); a new reading corrects it.", "PASS: ", "1 pass, 0 fail");
    }

    [Fact]
    public async Task What_is_no_reading_and_a_skip_without_reason_are_refused_and_asked_again()
    {
        var run = await BenchAsync("B-4", "about five\nskip\nback\nnext\n\nnote Black conductor in place of grey\nquit\n");

        Assert.Equal(0, run.Exit);
        InOrder(run.Output, "`about five` is not a reading.", "The reason is empty.", "This is the first check.", "No other check", "Type what the meter shows", "Noted.", "0 left out");
    }

    [Fact]
    public async Task The_end_of_the_input_ends_the_walk_and_keeps_what_was_entered()
    {
        var run = await BenchAsync("B-5", "0.2");

        Assert.Equal(0, run.Exit);
        Assert.Contains("1 pass, 0 fail", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_new_build_without_a_builder_is_refused()
    {
        var run = await Run.WithInputAsync("quit\n", "bench", "pennywort", "--journal", folder.At("journal.db"));

        Assert.Equal(2, run.Exit);
        Assert.Contains("--builder", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_comparison_says_of_each_reading_on_record_whether_it_still_holds()
    {
        await BenchAsync("B-6", "0.2\nquit\n");

        var run = await Run.OfAsync("compare", "pennywort", "pennywort-as-wired", "--build", "B-6", "--journal", folder.At("journal.db"));

        Assert.Equal(1, run.Exit);
        InOrder(run.Output, "have changed places", "Readings on record:", "0.20 Ω. Still holds.");
    }

    private Task<Run> BenchAsync(string serial, string typed) =>
        Run.WithInputAsync(typed, "bench", "pennywort", "--serial", serial, "--builder", "Mara Lindt", "--journal", folder.At("journal.db"));

    private static void InOrder(string text, params string[] parts)
    {
        var at = 0;
        foreach (var part in parts)
        {
            var found = text.IndexOf(part, at, StringComparison.Ordinal);
            Assert.True(found >= 0, $"`{part}` does not follow in:\n{text}");
            at = found + part.Length;
        }
    }
}
