using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Electrical;

public sealed class CheckWordsTests
{
    [Theory]
    [InlineData("Ω", 4700, "4.70 kΩ")]
    [InlineData("V", 0.512, "0.512 V")]
    [InlineData("V", double.PositiveInfinity, "OL")]
    [InlineData("K", 21.5, "21.5 K")]
    public void A_reading_is_written_in_the_unit_of_its_check(string unit, double value, string words) => Assert.Equal(words, CheckWords.Value(unit, value));

    [Theory]
    [InlineData("Ω", 1e6, double.PositiveInfinity, "more than 1.00 MΩ, or OL")]
    [InlineData("V", 0.4, 0.7, "0.400 to 0.700 V")]
    [InlineData("A", 1, 2, "1 to 2 A")]
    public void An_expectation_is_written_in_the_unit_of_its_check(string unit, double low, double high, string words) =>
        Assert.Equal(words, CheckWords.Interval(unit, new ReadingInterval(low, high)));

    [Fact]
    public void Every_way_of_measuring_is_found_by_its_kind() => Assert.All(MeterModes.All, mode => Assert.Same(mode, MeterMode.OfKind(mode.Kind)));
}
