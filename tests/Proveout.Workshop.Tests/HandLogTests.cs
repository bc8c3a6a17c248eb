namespace Proveout.Workshop.Tests;

public sealed class HandLogTests
{
    private const long Began = 1_000_000;

    private static readonly HandLog Two = Noted(Noted(HandLog.Empty("paste"), "21.0", false, 0), "21,4", true, 30);

    [Fact]
    public void A_reading_gets_the_time_since_the_first() =>
        Assert.Equal([new(0, 21, false), new(30, 21.4, true)], Two.Rows);

    [Fact]
    public void What_a_page_carries_reads_back_as_the_same_log()
    {
        var read = HandLog.Read("paste", "1000000", Two.Lines.ReplaceLineEndings("\r\n"));

        Assert.Equal((Two.Lines, Two.BeganMilliseconds), (read.Value!.Lines, read.Value.BeganMilliseconds));
    }

    [Fact]
    public void A_reading_that_is_taken_back_leaves_the_ones_before() =>
        Assert.Equal("0.0;21;0", Two.WithoutLast().Lines);

    [Fact]
    public void Without_its_only_reading_the_log_begins_anew() =>
        Assert.Null(Two.WithoutLast().WithoutLast().BeganMilliseconds);

    [Theory]
    [InlineData("")]
    [InlineData("warm")]
    [InlineData("NaN")]
    [InlineData("1e9")]
    [InlineData("-40")]
    public void What_is_no_temperature_is_refused_and_nothing_of_the_log_is_lost(string shown)
    {
        var refused = Two.With(shown, true, Began + 40_000);

        Assert.Contains("is no temperature", Assert.Single(refused.Diagnostics).Message, StringComparison.Ordinal);
        Assert.Equal(2, Two.Rows.Count);
    }

    [Theory]
    [InlineData("0;21;50")]
    [InlineData("0;21")]
    [InlineData("-1;21;0")]
    [InlineData("5;21;0\n4;21;0")]
    [InlineData("0;21;0\nsomething else")]
    public void Rows_that_no_page_of_ours_wrote_are_refused(string lines) =>
        Assert.Equal("unreadable-rows", Assert.Single(HandLog.Read("paste", "1000000", lines).Diagnostics).Rule);

    [Fact]
    public void A_clock_that_went_back_is_told_instead_of_noted() =>
        Assert.Equal("other-time", Assert.Single(Two.With("22", true, Began + 10_000).Diagnostics).Rule);

    [Fact]
    public void A_log_is_full_after_so_many_readings()
    {
        var full = new HandLog("paste", Began, [.. Enumerable.Range(0, HandLog.MostRows).Select(second => new HandLogRow(second, 20, false))]);

        Assert.Equal("too-many-rows", Assert.Single(full.With("20", false, Began + 600_000).Diagnostics).Rule);
    }

    [Fact]
    public void A_sound_heater_logged_by_hand_every_quarter_of_a_minute_is_judged_as_sound_by_all_that_such_a_log_can_tell()
    {
        // First order with dead time between the limits that the machine file gives: 58 °C after 1.1 to 2.6 min.
        var log = HandLog.Empty("paste");
        foreach (var second in new[] { 0, 20, 40, 60 })
            log = Noted(log, "21.0", false, second);
        for (var second = 62; second < 260; second += 13)
            log = Noted(log, FormattableString.Invariant($"{21 + (138 * (1 - Math.Exp(-Math.Max(0, second - 66) / 300.0))):0.0}"), true, second);

        var answer = HeatLogJudgement.Of(new HeatLogRequest(LogSource.Of(new NamedText("log", log.Text)), null, "paste", "", "", new Dictionary<string, string>()), [.. Samples.Load("pennywort").Design.Heated]);

        Assert.True(answer.Value!.Sheet.IsFine, string.Join(' ', answer.Value.Sheet.Findings));
    }

    private static HandLog Noted(HandLog log, string shown, bool isFull, int second) => log.With(shown, isFull, Began + (second * 1000L)).Value!;
}
