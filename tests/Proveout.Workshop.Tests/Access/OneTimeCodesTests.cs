using System.Text;

namespace Proveout.Workshop.Tests.Access;

public sealed class OneTimeCodesTests
{
    // The secret of both appendices: the ASCII text "12345678901234567890".
    private static readonly byte[] Key = Encoding.ASCII.GetBytes("12345678901234567890");

    [Theory]
    [InlineData(0, "755224")]
    [InlineData(1, "287082")]
    [InlineData(2, "359152")]
    [InlineData(3, "969429")]
    [InlineData(4, "338314")]
    [InlineData(5, "254676")]
    [InlineData(6, "287922")]
    [InlineData(7, "162583")]
    [InlineData(8, "399871")]
    [InlineData(9, "520489")]
    public void Codes_of_counters_are_those_of_RFC_4226_appendix_D(long counter, string code) => Assert.Equal(code, OneTimeCodes.Of(Key, counter));

    [Theory]
    [InlineData(59, 0x1, "94287082")]
    [InlineData(1111111109, 0x23523EC, "07081804")]
    [InlineData(1111111111, 0x23523ED, "14050471")]
    [InlineData(1234567890, 0x273EF07, "89005924")]
    [InlineData(2000000000, 0x3F940AA, "69279037")]
    [InlineData(20000000000, 0x27BC86AA, "65353130")]
    public void Codes_by_time_are_those_of_RFC_6238_appendix_B_with_SHA_1(long seconds, long step, string code)
    {
        Assert.Equal(step, OneTimeCodes.StepOf(DateTimeOffset.FromUnixTimeSeconds(seconds)));
        Assert.Equal(code, OneTimeCodes.Of(Key, step, digits: 8));
        Assert.Equal(code[2..], OneTimeCodes.Of(Key, step));
    }

    [Theory]
    [InlineData(-2, false)]
    [InlineData(-1, true)]
    [InlineData(0, true)]
    [InlineData(1, true)]
    [InlineData(2, false)]
    public void A_code_fits_one_step_before_and_one_after_its_own(int late, bool fits)
    {
        var now = DateTimeOffset.FromUnixTimeSeconds(1111111109);
        var step = OneTimeCodes.StepOf(now) + late;
        Assert.Equal(fits ? step : null, OneTimeCodes.FittingStep(Key, OneTimeCodes.Of(Key, step), now, after: 0));
    }

    [Fact]
    public void A_code_that_was_taken_is_not_taken_again_nor_one_before_it()
    {
        var now = DateTimeOffset.FromUnixTimeSeconds(1111111109);
        var step = OneTimeCodes.StepOf(now);
        Assert.Null(OneTimeCodes.FittingStep(Key, OneTimeCodes.Of(Key, step), now, after: step));
        Assert.Null(OneTimeCodes.FittingStep(Key, OneTimeCodes.Of(Key, step - 1), now, after: step));
        Assert.Equal(step + 1, OneTimeCodes.FittingStep(Key, OneTimeCodes.Of(Key, step + 1), now, after: step));
    }

    [Theory]
    [InlineData("")]
    [InlineData("08180")]
    [InlineData("0081804")]
    [InlineData("08180x")]
    [InlineData("０81804")]
    public void What_is_not_six_digits_fits_nothing(string typed) =>
        Assert.Null(OneTimeCodes.FittingStep(Key, typed, DateTimeOffset.FromUnixTimeSeconds(1111111109), after: 0));

    [Fact]
    public void Blanks_as_authenticators_show_them_do_not_matter() =>
        Assert.NotNull(OneTimeCodes.FittingStep(Key, " 081 804 ", DateTimeOffset.FromUnixTimeSeconds(1111111109), after: 0));

    // RFC 4648, 10: the test vectors of base 32, without their padding.
    [Theory]
    [InlineData("", "")]
    [InlineData("f", "MY")]
    [InlineData("fo", "MZXQ")]
    [InlineData("foo", "MZXW6")]
    [InlineData("foob", "MZXW6YQ")]
    [InlineData("fooba", "MZXW6YTB")]
    [InlineData("foobar", "MZXW6YTBOI")]
    public void A_key_is_written_in_base_32_and_read_back(string bytes, string text)
    {
        var key = OneTimeKey.Of(Encoding.ASCII.GetBytes(bytes));
        Assert.Equal(text, key.Text);
        Assert.Equal(bytes, Encoding.ASCII.GetString(key.Bytes()));
    }

    [Fact]
    public void A_new_key_has_160_bits_and_is_another_each_time()
    {
        Assert.Equal(20, OneTimeKey.New().Bytes().Length);
        Assert.NotEqual(OneTimeKey.New().Text, OneTimeKey.New().Text);
    }

    [Fact]
    public void The_address_says_key_digits_and_period_and_keeps_names_apart() => Assert.Equal(
        "otpauth://totp/Proveout%20bench.local:Mara%20%22Mo%22%20Lindt?secret=MZXW6YTBOI&issuer=Proveout%20bench.local&algorithm=SHA1&digits=6&period=30",
        new OneTimeKey("MZXW6YTBOI").AddressFor("bench.local", "Mara \"Mo\" Lindt"));

    [Fact]
    public void Neither_a_key_nor_what_is_kept_of_a_person_puts_the_key_into_a_text()
    {
        var factor = new SecondFactor("MZXW6YTBOI", 0, [], default, IsOn: true);
        Assert.DoesNotContain("MZXW6", $"{new OneTimeKey("MZXW6YTBOI")} {factor} {new KnownPerson(default, "Mara", AccessRole.Builder, "", default) { Second = factor }}", StringComparison.Ordinal);
    }
}
