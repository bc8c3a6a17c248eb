using Proveout.Engine.Faults;

namespace Proveout.Workshop.Tests.Readings;

public sealed class ReadingTextTests
{
    [Theory]
    [InlineData("0.58", "V", 0.58)]
    [InlineData("24,1", "V", 24.1)]
    [InlineData("580 mV", "V", 0.58)]
    [InlineData("-24.0", "V", -24)]
    [InlineData("−24 V", "V", -24)]
    [InlineData("350 mA", "A", 0.35)]
    [InlineData("1,2", "A", 1.2)]
    [InlineData("12.5", "K", 12.5)]
    [InlineData("12,5 K", "K", 12.5)]
    [InlineData("yes", "", 1)]
    [InlineData("No", "", 0)]
    [InlineData("106", "Ω", 106)]
    public void A_reading_is_read_in_the_unit_of_its_check(string text, string unit, double value) =>
        Assert.Equal(value, ReadingText.TryRead(text, unit)!.Value, 9);

    [Theory]
    [InlineData("Ω")]
    [InlineData("V")]
    public void Over_range_is_a_reading_of_every_meter(string unit) => Assert.Equal(ReadingInterval.OverRange, ReadingText.TryRead("OL", unit));

    [Theory]
    [InlineData("-5", "Ω")]
    [InlineData("24 A", "V")]
    [InlineData("perhaps", "")]
    [InlineData("about right", "V")]
    [InlineData("1e400", "K")]
    [InlineData("nan", "s")]
    [InlineData("NaN", "K")]
    [InlineData("Infinity", "Hz")]
    public void What_is_no_reading_in_that_unit_is_refused(string text, string unit) => Assert.Null(ReadingText.TryRead(text, unit));

    [Theory]
    [InlineData("Ω")]
    [InlineData("V")]
    [InlineData("A")]
    [InlineData("K")]
    [InlineData("")]
    public void Each_unit_says_what_can_be_typed(string unit) => Assert.NotEmpty(ReadingText.HelpFor(unit));
}
