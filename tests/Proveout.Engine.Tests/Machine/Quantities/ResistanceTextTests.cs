using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

public sealed class ResistanceTextTests
{
    // The examples of IEC 60062:2016, clause 4.2 (letter and digit code for resistance values); from memory.
    [Theory]
    [InlineData("R10", 0.1)]
    [InlineData("R15", 0.15)]
    [InlineData("R33", 0.33)]
    [InlineData("R332", 0.332)]
    [InlineData("R47", 0.47)]
    [InlineData("1R0", 1)]
    [InlineData("3R32", 3.32)]
    [InlineData("4R7", 4.7)]
    [InlineData("10R", 10)]
    [InlineData("33R2", 33.2)]
    [InlineData("332R", 332)]
    [InlineData("1K0", 1_000)]
    [InlineData("3K32", 3_320)]
    [InlineData("10K", 10_000)]
    [InlineData("33K2", 33_200)]
    [InlineData("332K", 332_000)]
    [InlineData("1M0", 1e6)]
    [InlineData("3M32", 3.32e6)]
    [InlineData("10M", 10e6)]
    [InlineData("332M", 332e6)]
    [InlineData("1G0", 1e9)]
    [InlineData("10G", 10e9)]
    [InlineData("1T0", 1e12)]
    public void Value_codes_of_iec_60062_are_read(string code, double ohms) => Reads(code, ohms);

    [Theory]
    [InlineData("4k7", 4_700)]
    [InlineData("47k", 47_000)]
    [InlineData("0R3", 0.3)]
    [InlineData("0.3", 0.3)]
    [InlineData("12 Ω", 12)]
    [InlineData("12Ω", 12)]
    [InlineData("12 \u2126", 12)]
    [InlineData("4,7 kΩ", 4_700)]
    [InlineData("4.7 kohm", 4_700)]
    [InlineData("4.7 kOhm", 4_700)]
    [InlineData("4.7k", 4_700)]
    [InlineData("1.2 M", 1.2e6)]
    [InlineData("5 mohm", 0.005)]
    [InlineData("5 mΩ", 0.005)]
    [InlineData("2 MΩ", 2e6)]
    [InlineData(" 105.8\u00A0ohm ", 105.8)]
    [InlineData("0", 0)]
    [InlineData("0,0", 0)]
    [InlineData("1.5e+3 ohm", 1_500)]
    public void What_people_type_at_the_bench_is_read(string text, double ohms) => Reads(text, ohms);

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("k")]
    [InlineData("R")]
    [InlineData("OL")]
    [InlineData("open")]
    [InlineData("-1")]
    [InlineData("4m7")]
    [InlineData("300m")]
    [InlineData("4e7")]
    [InlineData("4k7 ohm")]
    [InlineData("4k7k")]
    [InlineData("1.234.5")]
    [InlineData("1,234.5")]
    [InlineData("12 V")]
    [InlineData("12 ohm m")]
    [InlineData("1e+999")]
    [InlineData("1e+99999999999")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("٣")]
    public void What_is_no_resistance_or_could_mean_two_is_not(string text) => Assert.False(QuantityText.TryParseResistance(text, out _));

    private static void Reads(string text, double ohms)
    {
        Assert.True(QuantityText.TryParseResistance(text, out var value));
        Assert.Equal(ohms, value.Ohms); // exactly: text and code go through the same rounding
    }
}
