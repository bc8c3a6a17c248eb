namespace Proveout.Workshop.Tests;

public sealed class SpokenReadingTests
{
    [Theory]
    [InlineData("four point seven kilo ohm", "Ω", "4.7 kΩ")]
    [InlineData("Four point seven kilohms.", "Ω", "4.7 kΩ")]
    [InlineData("4.7 kilo ohms", "Ω", "4.7 kΩ")]
    [InlineData("4.7 kΩ", "Ω", "4.7 kΩ")]
    [InlineData("zero point three", "Ω", "0.3")]
    [InlineData("point three ohm", "Ω", "0.3")]
    [InlineData("one oh six", "Ω", "106")]
    [InlineData("one hundred and six ohms", "Ω", "106")]
    [InlineData("one thousand two hundred", "Ω", "1200")]
    [InlineData("forty seven", "Ω", "47")]
    [InlineData("it reads twelve point oh four", "Ω", "12.04")]
    [InlineData("two megohms", "Ω", "2 MΩ")]
    [InlineData("minus zero point five eight volts", "V", "-0.58")]
    [InlineData("-0.58 V", "V", "-0.58")]
    [InlineData("five hundred eighty millivolts", "V", "580 mV")]
    [InlineData("open", "Ω", "OL")]
    [InlineData("Over range.", "Ω", "OL")]
    public void What_is_said_becomes_what_would_be_typed(string heard, string unit, string typed) =>
        Assert.Equal(typed, SpokenReading.TryRead(heard, unit));

    [Theory]
    [InlineData("twenty thirty", "Ω")]
    [InlineData("four hundred hundred", "Ω")]
    [InlineData("point forty seven", "Ω")]
    [InlineData("one point two point three", "Ω")]
    [InlineData("four point seven", "")]
    [InlineData("kilo ohm", "Ω")]
    [InlineData("three volts", "Ω")]
    [InlineData("minus four ohms", "Ω")]
    [InlineData("four kilo kilohm", "Ω")]
    [InlineData("forty ten", "Ω")]
    [InlineData("six or seven", "Ω")]
    [InlineData("", "Ω")]
    public void What_could_be_two_numbers_or_another_unit_is_no_reading(string heard, string unit) =>
        Assert.Null(SpokenReading.TryRead(heard, unit));

    [Fact]
    public void Every_whole_number_below_a_thousand_is_understood_in_words()
    {
        foreach (var number in Enumerable.Range(0, 1000))
            Assert.Equal($"{number}", SpokenReading.TryRead(InWords(number), "Ω"));
    }

    private static string InWords(int number)
    {
        string[] small =
        [
            "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen",
            "seventeen", "eighteen", "nineteen",
        ];
        string[] tens = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];
        return number switch
        {
            < 20 => small[number],
            < 100 => $"{tens[number / 10]} {(number % 10 == 0 ? "" : small[number % 10])}".Trim(),
            _ => $"{small[number / 100]} hundred {(number % 100 == 0 ? "" : InWords(number % 100))}".Trim(),
        };
    }
}
