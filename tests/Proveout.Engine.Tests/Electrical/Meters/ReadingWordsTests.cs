using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Electrical.Meters;

public sealed class ReadingWordsTests
{
    [Theory]
    [InlineData(0.0473, "47.3 mΩ")]
    [InlineData(0.3, "0.30 Ω")]
    [InlineData(11.52, "11.5 Ω")]
    [InlineData(4700, "4.70 kΩ")]
    [InlineData(2.04e6, "2.04 MΩ")]
    [InlineData(double.PositiveInfinity, "OL")]
    public void A_reading_has_three_digits_and_a_unit(double ohms, string words) => Assert.Equal(words, ReadingWords.Of(ohms));

    [Theory]
    [InlineData(0, 0.978, "0.97 Ω or less")]
    [InlineData(98.72, 112.98, "98.8 Ω to 112 Ω")]
    [InlineData(2801000, double.PositiveInfinity, "more than 2.81 MΩ, or OL")]
    [InlineData(double.PositiveInfinity, double.PositiveInfinity, "OL (over range)")]
    public void The_limits_of_an_expectation_are_rounded_inward(double low, double high, string words) =>
        Assert.Equal(words, ReadingWords.Of(new ReadingInterval(low, high)));
}
