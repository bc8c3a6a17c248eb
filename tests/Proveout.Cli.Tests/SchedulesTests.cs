namespace Proveout.Cli.Tests;

public sealed class SchedulesTests(TemporaryFolder folder) : IClassFixture<TemporaryFolder>
{
    [Fact]
    public async Task Every_schedule_is_a_table_a_page_and_paper_with_cautions_first()
    {
        var run = await Run.OfAsync("schedules", "pennywort", "--out", folder.At("paper"), "--reel", "10 m");

        Assert.Equal((0, ""), (run.Exit, run.Complaints));
        Assert.Equal(
            ["connectors.csv", "cut-list.csv", "jumper-map.csv", "labels.html", "labels.pdf", "order-of-work.csv", "part-list.csv", "schedules.html", "schedules.pdf", "terminations.csv", "torque-list.csv", "wire-list.csv"],
            Directory.GetFiles(folder.At("paper")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        var page = await File.ReadAllTextAsync(Path.Combine(folder.At("paper"), "schedules.html"), TestContext.Current.CancellationToken);
        Assert.True(page.IndexOf("Before anything else", StringComparison.Ordinal) < page.IndexOf("Fit W", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_reel_without_a_unit_is_refused_in_words()
    {
        var run = await Run.OfAsync("schedules", "pennywort", "--out", folder.At("none"), "--reel", "10");

        Assert.Equal(2, run.Exit);
        Assert.Contains("`10` has no unit", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.At("none")));
    }
}
