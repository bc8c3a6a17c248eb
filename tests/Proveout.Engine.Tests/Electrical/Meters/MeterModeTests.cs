using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>What the meter may show, against meters simulated inside their specification.</summary>
public sealed class MeterModeTests
{
    private static readonly Gen<double> Fraction = Gen.Choose(0, 1_000_000).Select(part => part / 1e6);

    private static readonly Gen<double> Ohms = Gen.Choose(-4000, 8500).Select(exponent => Math.Pow(10, exponent / 1000.0));

    private static readonly Gen<ResistanceMode> Mode = Gen.Elements(MeterMode.Resistance, MeterMode.FourWire);

    [Fact]
    public void Every_display_of_a_meter_inside_its_specification_is_among_what_may_be_shown()
    {
        var cases =
            from mode in Mode
            from low in Ohms
            from width in Fraction
            from inside in Fraction
            from lead in Fraction
            from error in Fraction
            from choice in Fraction
            select (Mode: mode, Low: low, High: low * (1 + width), Inside: inside, Lead: lead, Error: error, Choice: choice);
        FsCheck.Check.One(Config.QuickThrowOnFailure.WithMaxTest(5000), Prop.ForAll(cases.ToArbitrary(), each =>
        {
            var present = each.Low + (each.Inside * (each.High - each.Low));
            var atLeads = present + each.Mode.LeadLowOhms + (each.Lead * (each.Mode.LeadHighOhms - each.Mode.LeadLowOhms));
            return each.Mode.Shown(each.Low, each.High).Contains(Display(each.Mode, atLeads, each.Error, each.Choice));
        }));
    }

    [Fact]
    public void A_narrower_band_never_shows_more()
    {
        // Inclusion isotonicity; Moore, Interval Analysis (1966), chapter 3.
        var cases = from mode in Mode from limits in Ohms.ArrayOf(4) select (Mode: mode, Limits: limits.Order().ToArray());
        FsCheck.Check.One(Config.QuickThrowOnFailure.WithMaxTest(5000), Prop.ForAll(cases.ToArbitrary(), each =>
        {
            var wide = each.Mode.Shown(each.Limits[0], each.Limits[3]);
            var narrow = each.Mode.Shown(each.Limits[1], each.Limits[2]);
            return wide.Low <= narrow.Low && narrow.High <= wide.High;
        }));
    }

    [Fact]
    public void What_shows_above_or_below_all_that_was_expected_lies_there_itself()
    {
        // What the search for verdicts rests on (CatchPorts): a true value within what is expected cannot be told from it.
        var modes = Gen.Elements(MeterModes.All.ToArray());
        var cases = from mode in modes from expected in Ohms.ArrayOf(2) from limits in Ohms.ArrayOf(2) select (Mode: mode, Expected: expected.Order().ToArray(), Limits: limits.Order().ToArray());
        FsCheck.Check.One(Config.QuickThrowOnFailure.WithMaxTest(20_000), Prop.ForAll(cases.ToArbitrary(), each =>
        {
            var expected = each.Mode.Shown(each.Expected[0], each.Expected[1]);
            var shown = each.Mode.Shown(each.Limits[0], each.Limits[1]);
            return (shown.Low <= expected.High || each.Limits[0] > expected.High) && (shown.High >= expected.Low || each.Limits[1] < expected.Low);
        }));
    }

    [Fact]
    public void An_open_path_shows_over_range_only() =>
        Assert.True(MeterMode.Resistance.Shown(double.PositiveInfinity, double.PositiveInfinity).IsOverRangeOnly);

    [Fact]
    public void A_hundred_ohms_shows_within_one_percent_three_digits_and_the_leads()
    {
        // ±(1 % + 3 digits) of 0.1 ohm on the 600 ohm range, leads -0.1 to +0.3 ohm, worked by hand.
        var shown = MeterMode.Resistance.Shown(100, 100);
        Assert.Equal((99.9 * 0.99) - 0.3, shown.Low, 1e-9);
        Assert.Equal((100.3 * 1.01) + 0.3, shown.High, 1e-9);
    }

    // The value lies on one range or, near the end of one, on either of two; the error is anywhere inside ±(% + digits), whole digits only.
    private static double Display(ResistanceMode mode, double ohms, double error, double choice)
    {
        var ranges = mode.Ranges.Where((range, index) => ohms <= range.FullScale * 1.02 && (index == 0 || ohms >= mode.Ranges[index - 1].FullScale * 0.98)).ToArray();
        if (ranges.Length == 0 || (ohms > mode.Ranges[^1].FullScale * 0.98 && choice < 0.3))
            return ReadingInterval.OverRange;
        var range = ranges[(int)Math.Min(ranges.Length - 1, choice * ranges.Length)];
        var offset = ((2 * error) - 1) * ((Math.Abs(ohms) * range.RelativeError) + (range.Digits * range.Resolution));
        var digits = (ohms + offset) / range.Resolution;
        return Math.Max(0, (offset < 0 ? Math.Ceiling(digits) : Math.Floor(digits)) * range.Resolution);
    }
}
