using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

public sealed class WireGaugeTests
{
    // ASTM B258: nominal diameters of solid round wire, and the cross-sections they give; mm².
    [Theory]
    [InlineData(30, 0.05093)]
    [InlineData(28, 0.08098)]
    [InlineData(26, 0.12876)]
    [InlineData(24, 0.20473)]
    [InlineData(22, 0.32553)]
    [InlineData(20, 0.51762)]
    [InlineData(18, 0.82305)]
    [InlineData(16, 1.30870)]
    [InlineData(14, 2.08091)]
    [InlineData(12, 3.30877)]
    [InlineData(10, 5.26115)]
    public void A_gauge_number_gives_its_cross_section(int gauge, double squareMillimetres)
    {
        Assert.True(QuantityText.TryParseArea($"AWG {gauge}", out var area));
        Assert.Equal(squareMillimetres, area.SquareMillimeters, 5);
    }

    // ASTM B258 defines No. 0000 as 0.4600 in and No. 36 as 0.0050 in; 39 steps lie between, 36 of them from No. 0 (0.3249 in).
    [Fact]
    public void The_gauge_numbers_at_the_ends_have_the_diameters_that_define_them()
    {
        Assert.Equal(0.127, Diameter(36), 12);
        Assert.Equal(0.3249, Diameter(0) / 25.4, 4);
    }

    [Theory]
    [InlineData("AWG20")]
    [InlineData("awg 20")]
    public void It_may_be_written_with_other_spacing_and_case(string text)
    {
        Assert.True(QuantityText.TryParseArea(text, out var area));
        Assert.Equal(WireGauge.SquareMillimetres(20), area.SquareMillimeters);
    }

    [Theory]
    [InlineData("AWG")]
    [InlineData("AWG -1")]
    [InlineData("AWG 57")]
    [InlineData("AWG 20.5")]
    [InlineData("AWG twenty")]
    [InlineData("20")]
    public void Anything_else_is_no_gauge(string text) => Assert.False(QuantityText.TryParseArea(text, out _));

    private static double Diameter(int gauge) => Math.Sqrt(WireGauge.SquareMillimetres(gauge) * 4 / Math.PI);
}
