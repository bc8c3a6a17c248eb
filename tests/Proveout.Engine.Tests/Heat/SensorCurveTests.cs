using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Heat;

namespace Proveout.Engine.Tests.Heat;

/// <summary>Curves of sensors against published tables.</summary>
public sealed class SensorCurveTests
{
    // IEC 60751 table 1, two decimals as printed.
    [Theory]
    [InlineData(-200, 18.52)]
    [InlineData(-100, 60.26)]
    [InlineData(-50, 80.31)]
    [InlineData(0, 100.00)]
    [InlineData(25, 109.73)]
    [InlineData(100, 138.51)]
    [InlineData(200, 175.86)]
    [InlineData(300, 212.05)]
    [InlineData(500, 280.98)]
    [InlineData(600, 313.71)]
    public void Platinum_has_the_resistances_of_IEC_60751(double celsius, double printed)
    {
        Assert.Equal(printed, new PlatinumResistance(100).OhmsAt(celsius), 0.0051);
        Assert.Equal(celsius, new PlatinumResistance(1000).CelsiusAt(new PlatinumResistance(1000).OhmsAt(celsius)), 1e-6);
    }

    // IEC 60751 table 3: tolerance of class A and B in K.
    [Theory]
    [InlineData(-200, 0.55, 1.3)]
    [InlineData(0, 0.15, 0.3)]
    [InlineData(200, 0.55, 1.3)]
    [InlineData(400, 0.95, 2.3)]
    public void Platinum_has_the_tolerances_of_IEC_60751(double celsius, double classA, double classB) =>
        Assert.Equal((classA, classB), (Math.Round(PlatinumResistance.ClassA(celsius), 9), Math.Round(PlatinumResistance.ClassB(celsius), 9)));

    // NIST Monograph 175, type K, reference at 0 °C: printed to the microvolt.
    [Theory]
    [InlineData(-50, -1.889)]
    [InlineData(0, 0.000)]
    [InlineData(25, 1.000)]
    [InlineData(100, 4.096)]
    [InlineData(200, 8.138)]
    [InlineData(300, 12.209)]
    [InlineData(500, 20.644)]
    [InlineData(1000, 41.276)]
    public void Type_K_has_the_voltages_of_NIST_Monograph_175(double celsius, double printed)
    {
        Assert.Equal(printed, ThermocoupleK.MillivoltsAt(celsius), 0.00051);
        Assert.Equal(celsius, ThermocoupleK.CelsiusAt(ThermocoupleK.MillivoltsAt(celsius)), 1e-6);
    }

    // The same functions by hand: 200 °C hot and 25 °C cold give 7.138 mV, which without compensation reads as 174.9 °C.
    [Fact]
    public void A_thermocouple_without_compensation_shows_too_little() =>
        Assert.Equal(174.946, ThermocoupleK.ShownWith(200, 25, 0), 0.001);

    // A laboratory instrument's widely reprinted calculator example: coefficients to ten digits.
    [Fact]
    public void Three_points_give_the_published_coefficients_of_Steinhart_and_Hart()
    {
        var curve = SteinhartHart.Fit([(5, 25_000), (25, 10_000), (45, 4_000)])!;
        Assert.Equal(2.108508173e-3, curve.A, 1e-12);
        Assert.Equal(0.7979204727e-4, curve.B, 1e-13);
        Assert.Equal(6.535076315e-7, curve.C, 1e-15);
        Assert.Equal(60, curve.CelsiusAt(curve.OhmsAt(60)), 1e-9);
    }

    // A handbook's table of a 10 kΩ part, whose coefficients it prints beside it.
    [Theory]
    [InlineData(0, 32650)]
    [InlineData(10, 19900)]
    [InlineData(20, 12490)]
    [InlineData(30, 8057)]
    [InlineData(50, 3603)]
    public void A_curve_fitted_to_a_table_of_many_points_follows_it(double celsius, double ohms)
    {
        var curve = SteinhartHart.Fit([(0, 32650), (10, 19900), (20, 12490), (25, 10000), (30, 8057), (40, 5327), (50, 3603)])!;
        Assert.Equal(celsius, curve.CelsiusAt(ohms), 0.02);
    }

    [Fact]
    public void Points_that_fix_no_curve_give_none()
    {
        Assert.Null(SteinhartHart.Fit([(0, 32650), (25, 10000)]));
        Assert.Null(SteinhartHart.Fit([(0, 100), (25, 110), (50, 119)]));
    }

    // Computed by hand from R = R25 exp(β (1/T - 1/T25)).
    [Theory]
    [InlineData(100e3, 3950, 200, 744.61)]
    [InlineData(100e3, 4267, 100, 5633.11)]
    [InlineData(10e3, 3435, 60, 2980.85)]
    public void A_thermistor_follows_its_beta(double ohmsAt25, double beta, double celsius, double ohms) =>
        Assert.Equal(ohms, new NtcBeta(ohmsAt25, beta).OhmsAt(celsius), 0.005);

    [Fact]
    public void Every_curve_is_its_own_inverse_over_its_range()
    {
        foreach (var type in SensorTypes.All)
            Prop.ForAll(Gen.Choose(-380, 3400).ToArbitrary(), tenths =>
            {
                var celsius = tenths / 10.0;
                return type.Corners.Append(type.Curve).All(curve => Math.Abs(curve.CelsiusAt(curve.OhmsAt(celsius)) - celsius) < 1e-6);
            }).QuickCheckThrowOnFailure();
    }
}
