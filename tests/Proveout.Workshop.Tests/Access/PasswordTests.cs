using System.Security.Cryptography;
using System.Text;

namespace Proveout.Workshop.Tests.Access;

public sealed class PasswordTests
{
    private const string Good = "seven herons wade upstream";

    [Fact]
    public void A_password_fits_its_own_hash_and_no_other_does()
    {
        var kept = PasswordHash.Make(Good);
        Assert.True(PasswordHash.Fits(Good, kept));
        Assert.False(PasswordHash.Fits(Good + " ", kept));
        Assert.False(PasswordHash.Fits(Good.ToUpperInvariant(), kept));
        Assert.False(PasswordHash.Fits("", kept));
    }

    [Fact]
    public void The_same_password_is_kept_differently_each_time() => Assert.NotEqual(PasswordHash.Make(Good), PasswordHash.Make(Good));

    [Fact]
    public void Rounds_are_no_fewer_than_the_Password_Storage_Cheat_Sheet_asks_for() => Assert.True(PasswordHash.Rounds >= 210_000);

    // The oracle is the definition of PBKDF2 (RFC 8018, 5.2) over the HMAC of the framework: block 1 is U1 xor U2 xor ... of the salt and the number 1.
    [Fact]
    public void A_hash_with_other_rounds_is_read_by_what_stands_in_it()
    {
        var salt = Encoding.ASCII.GetBytes("sixteen of bytes");
        var u = HMACSHA512.HashData(Encoding.UTF8.GetBytes(Good), (byte[])[.. salt, 0, 0, 0, 1]);
        var sum = (byte[])u.Clone();
        for (var round = 2; round <= 7; round++)
        {
            u = HMACSHA512.HashData(Encoding.UTF8.GetBytes(Good), u);
            for (var at = 0; at < sum.Length; at++)
                sum[at] ^= u[at];
        }

        Assert.True(PasswordHash.Fits(Good, $"pbkdf2-sha512:7:{Convert.ToBase64String(salt)}:{Convert.ToBase64String(sum[..32])}"));
        Assert.False(PasswordHash.Fits(Good, $"pbkdf2-sha512:8:{Convert.ToBase64String(salt)}:{Convert.ToBase64String(sum[..32])}"));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("plain:seven herons wade upstream")]
    public void What_is_no_hash_fits_nothing(string? kept) => Assert.False(PasswordHash.Fits(Good, kept));

    [Fact]
    public void An_unknown_name_costs_what_a_known_one_costs()
    {
        var kept = PasswordHash.Make(Good);
        var known = Least(() => PasswordHash.Fits("something else, long", kept));
        var unknown = Least(() => PasswordHash.Fits("something else, long", null));
        Assert.InRange(unknown / known, 0.25, 4);
    }

    [Theory]
    [InlineData("seven herons wade upstream")]
    [InlineData("Grüße vom Hof am Fluss")]
    [InlineData("k8#Qz!v2Lw@x9Pm")]
    [InlineData("correct horse battery staple is known, mine is not")]
    public void A_long_password_of_any_kind_is_taken(string password) => Assert.Null(PasswordRules.Against(password, "Mara Lindt"));

    [Theory]
    [InlineData("k8#Qz!v2Lw@x9P")]
    [InlineData("aaaaaaaaaaaaaaaa")]
    [InlineData("abababababababab")]
    [InlineData("1234567890123456")]
    [InlineData("qwertyuiopasdfgh")]
    [InlineData("abcdefghijklmnop")]
    [InlineData("passwordpassword")]
    [InlineData("Password-Password-1")]
    [InlineData("Proveout-Bench-2026")]
    [InlineData("Mara Lindt Mara Lindt")]
    [InlineData("correcthorsebatterystaple")]
    [InlineData("letmein letmein letmein")]
    public void A_password_that_is_short_or_soon_guessed_is_not(string password) => Assert.NotNull(PasswordRules.Against(password, "Mara Lindt"));

    [Fact]
    public void Sixty_four_characters_and_more_are_taken() => Assert.Null(PasswordRules.Against(string.Concat(Enumerable.Repeat(Good + "; ", 4)), "Mara Lindt"));

    private static double Least(Func<bool> work) => Enumerable.Range(0, 3).Min(_ =>
    {
        var start = TimeProvider.System.GetTimestamp();
        work();
        return TimeProvider.System.GetElapsedTime(start).TotalSeconds;
    });
}
