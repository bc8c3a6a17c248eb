using System.Collections.Concurrent;
using System.Text;

namespace Proveout.Workshop.Tests.Handover;

public sealed class AcceptanceTests
{
    public static TheoryData<string> Machines => ["alderbrook", "pennywort", "quarrymoor"];

    private static readonly ConcurrentDictionary<string, Lazy<AcceptanceView>> Lists = new();

    private static AcceptanceView Of(string name) => Lists.GetOrAdd(name, _ => new(() => AcceptanceList.Of(Samples.Load(name)))).Value;

    [Theory]
    [MemberData(nameof(Machines))]
    public void Every_item_has_its_own_name_and_says_what_is_good_and_what_to_do_otherwise(string name)
    {
        var items = Of(name).Items;

        Assert.Equal(items.Count, items.Select(item => item.Id).Distinct().Count());
        Assert.All(items, item => Assert.True(item.Good.Length > 0 && item.Otherwise.Length > 0 && item.Source.Length > 0 && AcceptanceView.CautionsOf(item.Phase).Count > 0, item.Id));
    }

    [Fact]
    public void Each_heated_body_has_its_sensor_taken_away_once()
    {
        var proofs = Of("alderbrook").Items.Where(item => item.Phase == AcceptancePhase.Protection).Select(item => item.Id).ToArray();

        Assert.Contains("plate-sensor-out", proofs);
        Assert.Contains("nozzle-sensor-out", proofs);
        Assert.Contains("stop-s2-pressed", proofs);
        Assert.Contains("residual-button", proofs);
    }

    [Fact]
    public void Air_leaves_a_bay_at_most_as_warm_as_predicted()
    {
        var machine = Samples.Load("alderbrook");
        var predicted = AirPrediction.Of(machine.Summary, machine.Design).Bays[0].Rise.WorkMost!.Value;

        var item = Of("alderbrook").Items.Single(item => item.Id == "bay-air");

        Assert.Contains(FormattableString.Invariant($"at most {Math.Ceiling(predicted):0} K warmer"), item.Good, StringComparison.Ordinal);
    }

    [Fact]
    public void A_machine_without_mains_is_not_asked_for_its_residual_current_device() =>
        Assert.DoesNotContain(Of("pennywort").Items, item => item.Id is "residual-button" or "insulation-again" or "earth-again");

    [Theory]
    [InlineData(10, "20261208")]
    [InlineData(2, "20270105")]
    [InlineData(168, "20261202")]
    public void Ten_hours_of_work_come_after_as_many_days_as_the_week_makes_of_them(double hoursAWeek, string day)
    {
        var calendar = Text(AcceptanceCalendar.Of(Of("alderbrook"), new DateOnly(2026, 12, 1), hoursAWeek));

        Assert.Contains($"DTSTART;VALUE=DATE:{day}\r\nSEQUENCE:0\r\nSUMMARY:Alderbrook: after ten hours", calendar, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_due_yearly_is_due_within_a_year_however_little_the_machine_works()
    {
        var calendar = Text(AcceptanceCalendar.Of(Of("alderbrook"), new DateOnly(2026, 12, 1), 0.1));

        Assert.Contains("DTSTART;VALUE=DATE:20271201", calendar, StringComparison.Ordinal);
        Assert.Contains("RRULE:FREQ=DAILY;INTERVAL=365", calendar, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_found_last_of_an_item_counts_and_what_is_not_good_needs_a_note()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var desk = new HandoverDesk(fixture.Shelf, fixture.Journal);
        var item = (await desk.AcceptanceOfBuildAsync(build.Id, default))!.List.Items[0].Id;

        Assert.Null((await desk.AcceptAsync(build.Id, item, AcceptanceAnswers.NotGood, " ", "Ada", Guid.NewGuid(), default)).Value);
        Assert.Null((await desk.AcceptAsync(build.Id, "no-such-item", AcceptanceAnswers.Good, "", "Ada", Guid.NewGuid(), default)).Value);
        await desk.AcceptAsync(build.Id, item, AcceptanceAnswers.NotGood, "It took ten minutes.", "Ada", Guid.NewGuid(), default);
        await desk.AcceptAsync(build.Id, item, AcceptanceAnswers.Good, "", "Bela", Guid.NewGuid(), default);

        var found = (await desk.AcceptanceOfBuildAsync(build.Id, default))!;
        Assert.Equal((AcceptanceAnswers.Good, "Bela"), (found.Found[item].Found, found.Found[item].Person));
        Assert.Equal((1, 0, false), (found.CountOf(AcceptanceAnswers.Good), found.CountOf(AcceptanceAnswers.NotGood), found.IsAccepted));
    }

    private static string Text(PaperFile file)
    {
        using var content = new MemoryStream();
        file.Write(content);
        return Encoding.UTF8.GetString(content.ToArray());
    }
}
