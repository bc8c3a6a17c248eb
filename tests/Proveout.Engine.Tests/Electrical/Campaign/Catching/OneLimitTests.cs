using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Electrical.Campaign.Catching;

/// <summary>What one limit of a true value tells, against both.</summary>
public sealed class OneLimitTests
{
    private static readonly Arbitrary<Case> Any = Arb.From(
        from mode in Gen.Elements(MeterModes.All.ToArray())
        from centre in Gen.Choose(-3000, 8000).Select(exponent => Math.Pow(10, exponent / 1000.0))
        from atStep in Gen.Elements(mode.Steps.DefaultIfEmpty(1).ToArray())
        from isAtStep in Gen.Elements(true, false)
        from shares in Gen.Choose(0, 1000).Select(part => 1 + (part / 10_000.0)).ArrayOf(4)
        let start = (isAtStep ? atStep : centre) / shares[0]
        select new Case(mode, new(start, start * shares[1]), new(start * shares[2], start * shares[2] * shares[3])));

    [Fact]
    public void What_the_lower_limit_tells_is_so_with_any_upper_limit() => FsCheck.Check.One(Config.QuickThrowOnFailure.WithMaxTest(20_000), Prop.ForAll(Any, item =>
        OneLimit.ShowsMore(item.Mode, item.Expected, item.True.Low) is not { } told
        || told == item.Mode.Shown(item.True.Low, item.True.High).Low > item.Expected.High));

    [Fact]
    public void What_the_upper_limit_tells_is_so_with_any_lower_limit() => FsCheck.Check.One(Config.QuickThrowOnFailure.WithMaxTest(20_000), Prop.ForAll(Any, item =>
        OneLimit.ShowsLess(item.Mode, item.Expected, item.True.High) is not { } told
        || told == item.Mode.Shown(item.True.Low, item.True.High).High < item.Expected.Low));

    [Theory]
    [InlineData(560, false)]
    [InlineData(587.5, null)]
    [InlineData(700, true)]
    public void Just_below_the_end_of_a_range_both_limits_decide(double ohms, bool? told)
    {
        // Of 587.5 ohm 581.2 shows at least on the range up to 600 ohm, but 579.1 or less on the next, which a value from 588 ohm may be shown on.
        var expected = new ReadingInterval(560, 580);

        Assert.Equal(told, OneLimit.ShowsMore(MeterMode.Resistance, expected, ohms));
        Assert.Equal(ohms > 580, MeterMode.Resistance.Shown(ohms, ohms).IsDisjointFrom(expected));
    }

    private sealed record Case(MeterMode Mode, (double Low, double High) Sound, (double Low, double High) True)
    {
        public ReadingInterval Expected => Mode.Shown(Sound.Low, Sound.High);
    }
}
