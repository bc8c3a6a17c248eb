using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Electrical.Meters;

public sealed class CheckWordsTests
{
    [Theory]
    [InlineData("resistance", "Ω", 4700, "4.70 kΩ")]
    [InlineData("diode-test", "V", 0.512, "0.512 V")]
    [InlineData("voltage", "V", -24, "-24.0 V")]
    [InlineData("temperature-rise", "K", 12.5, "12.5 K")]
    [InlineData("look", "", 1, "as it should be")]
    [InlineData("symptom", "", 0, "not as it should be")]
    [InlineData("diode-test", "V", double.PositiveInfinity, "OL")]
    public void A_reading_is_written_in_the_unit_of_its_check(string kind, string unit, double value, string words) =>
        Assert.Equal(words, CheckWords.Shown(Of(kind, unit), value));

    [Theory]
    [InlineData("resistance", "Ω", 95, 107, "95.0 Ω to 107 Ω")]
    [InlineData("diode-test", "V", 0.4, 0.7, "0.400 to 0.700 V")]
    [InlineData("voltage", "V", 22.551, 25.449, "22.6 to 25.4 V")]
    [InlineData("current", "A", 0, 0.319, "0.31 A or less")]
    [InlineData("look", "", 1, 1, "as it should be")]
    public void An_interval_is_rounded_inward(string kind, string unit, double low, double high, string words) =>
        Assert.Equal(words, CheckWords.Interval(Of(kind, unit), new ReadingInterval(low, high)));

    private static Check Of(string kind, string unit) => new("check", kind, "set-up", "", "", [], unit, ReadingInterval.Anything, "", 1);
}
