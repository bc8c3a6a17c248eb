using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Electrical.Live;

public sealed class TripCurvesTests
{
    // IEC 60127-2 sheets 2 and 3: longest pre-arcing times at 2.1, 2.75, 4 and 10 times the rated current. IEC 60898-1 table 7: 1.45 In within an
    // hour, 2.55 In within a minute, 5 In (B) and 10 In (C) within 0.1 s. ISO 8820-3: 2 In within 5 s, 6 In within 0.1 s.
    [Theory]
    [InlineData(FuseCurve.Quick, 2.1, 1800)]
    [InlineData(FuseCurve.Quick, 2.75, 2)]
    [InlineData(FuseCurve.Quick, 4, 0.3)]
    [InlineData(FuseCurve.Quick, 10, 0.02)]
    [InlineData(FuseCurve.TimeLag, 2.1, 120)]
    [InlineData(FuseCurve.TimeLag, 2.75, 10)]
    [InlineData(FuseCurve.TimeLag, 4, 3)]
    [InlineData(FuseCurve.TimeLag, 10, 0.3)]
    [InlineData(FuseCurve.BreakerB, 1.45, 3600)]
    [InlineData(FuseCurve.BreakerB, 2.55, 60)]
    [InlineData(FuseCurve.BreakerB, 5, 0.1)]
    [InlineData(FuseCurve.BreakerC, 10, 0.1)]
    [InlineData(FuseCurve.Blade, 2, 5)]
    [InlineData(FuseCurve.Blade, 6, 0.1)]
    public void The_longest_time_is_that_of_the_standard(FuseCurve curve, double multiple, double seconds) =>
        Assert.Equal(seconds, TripCurves.SecondsAt(curve, multiple), seconds * 1e-9);

    [Theory]
    [InlineData(FuseCurve.Quick, 1.5)]
    [InlineData(FuseCurve.TimeLag, 1.5)]
    [InlineData(FuseCurve.BreakerB, 1.13)]
    [InlineData(FuseCurve.BreakerC, 1.13)]
    [InlineData(FuseCurve.Blade, 1.1)]
    [InlineData(FuseCurve.Thermal, 100)]
    public void Below_its_conventional_current_a_device_need_not_interrupt(FuseCurve curve, double multiple) =>
        Assert.Equal(double.PositiveInfinity, TripCurves.SecondsAt(curve, multiple));

    // IEC 61008-1 table 1, general type: 0.3 s, 0.15 s, 0.04 s.
    [Theory]
    [InlineData(0.9, double.PositiveInfinity)]
    [InlineData(1, 0.3)]
    [InlineData(2, 0.15)]
    [InlineData(5, 0.04)]
    [InlineData(100, 0.04)]
    public void A_residual_current_device_keeps_the_times_of_IEC_61008(double multiple, double seconds) =>
        Assert.Equal(seconds, TripCurves.ResidualSecondsAt(multiple), 1e-9);

    [Fact]
    public void A_larger_current_never_takes_longer()
    {
        foreach (var curve in Enum.GetValues<FuseCurve>())
            for (var multiple = 1.0; multiple < 60; multiple *= 1.01)
                Assert.True(TripCurves.SecondsAt(curve, multiple * 1.01) <= TripCurves.SecondsAt(curve, multiple));
    }
}
