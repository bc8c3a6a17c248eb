using System.Collections.Concurrent;
using System.Globalization;

namespace Proveout.Workshop.Tests.Handover;

public sealed class SettingsSheetTests
{
    public static TheoryData<string> Machines => ["alderbrook", "pennywort", "quarrymoor"];

    private static readonly ConcurrentDictionary<string, Lazy<SettingsView>> Sheets = new();

    private static SettingsView Of(string name) => Sheets.GetOrAdd(name, _ => new(() => SettingsSheet.Of(Samples.Load(name)))).Value;

    [Theory]
    [MemberData(nameof(Machines))]
    public void Every_setting_says_where_it_comes_from_and_what_would_change_it(string name)
    {
        var settings = Of(name).Groups.SelectMany(group => group.Settings).ToArray();

        Assert.All(settings, setting => Assert.True(setting.From.Length > 0 && setting.Later.Length > 0, setting.Id));
        Assert.Equal(settings.Length, settings.Select(setting => setting.Id).Distinct().Count());
        Assert.All(settings, setting => Assert.Equal(setting.State == SettingState.Open, setting.Value.Length == 0));
    }

    [Fact]
    public void Steps_of_a_toothed_pulley_are_those_of_teeth_and_pitch()
    {
        // 20 teeth of 2 mm: 40 mm for a turn; both crossed belts of 200 full steps: 200 / 40 = 5 steps for 1 mm (common practice).
        var steps = Of("alderbrook").Groups.Single(group => group.Id == "steps").Settings.Single(setting => setting.Id == "steps-m1-x");

        Assert.Equal(5, Math.Abs(steps.Number!.Value), 6);
    }

    [Fact]
    public void The_current_of_a_motor_never_exceeds_what_its_terminals_bear_even_at_the_peak()
    {
        var machine = Samples.Load("alderbrook");

        Assert.All(
            Of("alderbrook").Groups.Single(group => group.Id == "motors").Settings,
            setting =>
            {
                var motor = setting.Id["current-".Length..].ToUpperInvariant();
                var bears = machine.Design.FindPart(motor)!.Type.Terminals.Select(terminal => terminal.Current?.Amperes ?? double.PositiveInfinity).Min();
                Assert.InRange(setting.Number!.Value * Math.Sqrt(2), 0.1, bears);
            });
    }

    [Theory]
    [MemberData(nameof(Machines))]
    public void Every_wrong_setting_is_surely_shown_by_a_trial(string name)
    {
        var table = Of(name).Mistakes;

        Assert.NotEmpty(table.Mistakes);
        Assert.All(table.Mistakes, row => Assert.True(row.CaughtBy.Count > 0, row.Fault.Id));
        Assert.All(table.SetUps, setUp => Assert.NotEmpty(setUp.Cautions));
    }

    [Theory]
    [MemberData(nameof(Machines))]
    public void Nothing_is_heated_or_driven_to_its_end_before_outputs_and_inputs_are_right(string name)
    {
        var kinds = Of(name).Mistakes.Checks.Select(check => check.Check.Kind).ToArray();

        Assert.DoesNotContain(kinds.SkipWhile(kind => kind is not ("guard" or "travel")), kind => kind is "output" or "input" or "jog");
    }

    [Fact]
    public void A_factor_of_steps_is_told_from_another_by_the_same_jog()
    {
        var table = Of("alderbrook").Mistakes;
        var jog = table.Checks.Single(check => check.Check.Id == "jog-x").Check;

        Assert.Equal((99, 101), (jog.Expectation.Low, jog.Expectation.High));
        Assert.Contains(table.Mistakes, row => row.Fault.Id == "steps-x-0-8" && row.CaughtBy.Contains(jog.Title));
        Assert.Contains(table.Mistakes, row => row.Fault.Id == "reversed-x" && row.Fault.Severity == Proveout.Engine.Faults.Severity.Damage);
    }

    [Fact]
    public void Outputs_exchanged_with_a_heater_are_a_fire() =>
        Assert.All(Of("pennywort").Mistakes.Mistakes.Where(row => row.Fault.Kind == "outputs-exchanged" && row.Fault.Sentence.Contains("OUT0", StringComparison.Ordinal)), row => Assert.Equal(Proveout.Engine.Faults.Severity.Fire, row.Fault.Severity));

    [Fact]
    public void A_measurement_takes_the_place_of_what_was_open()
    {
        var designed = Of("alderbrook");
        var kept = new KeptMeasurement(7, new DateTimeOffset(2026, 11, 28, 8, 0, 0, TimeSpan.Zero), "Ada", "tension", "Upper belt", "", [new("Force", 20.2, 0.6, "N")], new Dictionary<string, string>(), "", "");

        var sheet = SettingsSheet.WithMeasurements(designed, "P-7", [kept]);

        Assert.Equal(designed.Open - 1, sheet.Open);
        var measured = Assert.Single(sheet.Groups.Single(group => group.Id == "measured").Settings);
        Assert.Equal(("Upper belt: Force", "20.20 ± 0.60 N", 20.2, 0.6), (measured.Name, measured.Value, measured.Number, measured.Expanded));
    }

    [Fact]
    public void What_a_measurement_says_to_set_stands_apart_from_what_it_found_besides()
    {
        var kept = new KeptMeasurement(7, DateTimeOffset.UnixEpoch, "Ada", "motor", "X axis", "", [new("to set: current, r.m.s.", 0.9, 0, "A"), new("lowest first resonance", 41, 0, "Hz")], new Dictionary<string, string>(), "", "");

        var sheet = SettingsSheet.WithMeasurements(Of("pennywort"), "P-7", [kept]);

        Assert.Equal("X axis: current, r.m.s.", Assert.Single(sheet.Groups.Single(group => group.Id == "to-set").Settings).Name);
        Assert.Equal("X axis: lowest first resonance", Assert.Single(sheet.Groups.Single(group => group.Id == "measured").Settings).Name);
    }

    [Fact]
    public void Of_two_measurements_of_one_thing_the_later_counts()
    {
        KeptMeasurement Kept(long sequence, double force) =>
            new(sequence, DateTimeOffset.UnixEpoch, "Ada", "tension", "Upper belt", "", [new("Force", force, 0, "N")], new Dictionary<string, string>(), "", "");

        var sheet = SettingsSheet.WithMeasurements(Of("pennywort"), "P-7", [Kept(3, 18), Kept(9, 20)]);

        Assert.Equal(20, Assert.Single(sheet.Groups.Single(group => group.Id == "measured").Settings).Number);
    }

    [Fact]
    public void The_file_for_a_spreadsheet_gives_numbers_that_a_spreadsheet_reads()
    {
        using var content = new MemoryStream();
        SettingsFiles.Of(Of("alderbrook")).Single(file => file.Name == "settings.csv").Write(content);
        var lines = System.Text.Encoding.UTF8.GetString(content.ToArray()).TrimStart('\uFEFF').Split("\r\n");

        Assert.StartsWith("Group,Setting,Value,Number,Uncertainty,Unit,Known,From,What would change it", lines[0], StringComparison.Ordinal);
        var travel = lines.Single(line => line.Contains("Travel of x", StringComparison.Ordinal)).Split(',');
        Assert.Equal(300, double.Parse(travel[3], CultureInfo.InvariantCulture));
    }
}
