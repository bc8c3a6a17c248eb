using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Electrical.Review;

/// <summary>Kernels of sizing against published tables and worked examples.</summary>
public sealed class SizingTests
{
    // IEC 60204-1 table 6 as a servo drive's hardware guide prints it ("values per IEC 60204-1, continuous duty, 40 °C"), methods B2 and E.
    [Theory]
    [InlineData(0.75, 8.5, 10.4)]
    [InlineData(1.0, 10.1, 12.4)]
    [InlineData(1.5, 13.1, 16.1)]
    [InlineData(2.5, 17.4, 22)]
    [InlineData(4, 23, 30)]
    [InlineData(6, 30, 37)]
    [InlineData(10, 40, 52)]
    [InlineData(16, 54, 70)]
    [InlineData(25, 70, 88)]
    public void Capacities_are_those_of_IEC_60204_1_table_6(double squareMillimetres, double inTrunking, double inAir)
    {
        Assert.Equal(inTrunking, CurrentCapacity.Of(squareMillimetres, InstallationMethod.B2), 1e-9);
        Assert.Equal(inAir, CurrentCapacity.Of(squareMillimetres, InstallationMethod.E), 1e-9);
    }

    // IEC 60364-5-52 at 40 °C in whole amperes, method C, as a compressor maker's manual prints it.
    [Theory]
    [InlineData(1.5, 15)]
    [InlineData(2.5, 21)]
    [InlineData(4, 28)]
    [InlineData(6, 36)]
    [InlineData(10, 50)]
    [InlineData(16, 66)]
    [InlineData(25, 84)]
    [InlineData(35, 104)]
    public void Capacities_on_a_wall_are_those_of_IEC_60364_5_52(double squareMillimetres, double amperes) =>
        Assert.Equal(amperes, CurrentCapacity.Of(squareMillimetres, InstallationMethod.C), 0.5);

    // IEC 60204-1 table D.1 as a drive maker's manual prints it.
    [Theory]
    [InlineData(30, 1.15)]
    [InlineData(35, 1.08)]
    [InlineData(40, 1.00)]
    [InlineData(45, 0.91)]
    [InlineData(50, 0.82)]
    [InlineData(55, 0.71)]
    [InlineData(60, 0.58)]
    public void Factors_for_ambient_are_those_of_IEC_60204_1_table_D_1(double celsius, double factor) =>
        Assert.Equal(factor, CapacityFactors.ForAmbient(celsius), 0.0061);

    [Fact]
    public void Nothing_is_borne_where_the_air_is_as_hot_as_PVC_may_be() => Assert.Equal(0, CapacityFactors.ForAmbient(70));

    // IEC 60204-1 table D.2 (from memory, equal to IEC 60364-5-52 table B.52.17).
    [Theory]
    [InlineData(InstallationMethod.B1, 2, 0.80)]
    [InlineData(InstallationMethod.B1, 4, 0.65)]
    [InlineData(InstallationMethod.B2, 6, 0.57)]
    [InlineData(InstallationMethod.B2, 9, 0.50)]
    [InlineData(InstallationMethod.C, 2, 0.85)]
    [InlineData(InstallationMethod.C, 9, 0.70)]
    [InlineData(InstallationMethod.E, 4, 0.77)]
    [InlineData(InstallationMethod.E, 6, 0.73)]
    public void Factors_for_groups_are_those_of_IEC_60204_1_table_D_2(InstallationMethod method, int circuits, double factor) =>
        Assert.Equal(factor, CapacityFactors.ForGroup(circuits, method), 1e-9);

    // k as an adiabatic calculator after BS 7671 prints it, for PVC in a cable, PVC apart, thermosetting apart.
    [Theory]
    [InlineData(70, 160, 115)]
    [InlineData(30, 160, 143)]
    [InlineData(30, 250, 176)]
    public void The_factor_k_is_the_printed_one(double from, double to, double printed) => Assert.Equal(printed, Adiabatic.Factor(from, to), 0.5);

    // Worked examples: 5000 A for 0.1 s with k 143 ask for 11.1 mm², 2500 A for 0.1 s with k 115 for 6.9 mm² (arithmetic of S = √(I²t)/k, printed so).
    [Theory]
    [InlineData(5000, 0.1, 143, 11.1)]
    [InlineData(2500, 0.1, 115, 6.9)]
    public void The_adiabatic_equation_gives_the_worked_examples(double amperes, double seconds, double factor, double printed) =>
        Assert.Equal(printed, Adiabatic.LeastSquareMillimetres(amperes * amperes * seconds, factor), 0.05);

    // IEC 60127-2 sheets 2 and 3 as fuse makers' data sheets print them: shortest and longest pre-arcing time at a multiple of the rated current.
    [Theory]
    [InlineData(FuseCurve.TimeLag, 2.75, 0.6, 10)]
    [InlineData(FuseCurve.TimeLag, 4, 0.15, 3)]
    [InlineData(FuseCurve.TimeLag, 10, 0.02, 0.3)]
    [InlineData(FuseCurve.Quick, 2.75, 0.05, 2)]
    [InlineData(FuseCurve.Quick, 4, 0.01, 0.3)]
    public void Fuses_act_within_the_gates_of_IEC_60127_2(FuseCurve curve, double multiple, double least, double most)
    {
        Assert.Equal(least, Discrimination.LeastSeconds(curve, multiple), 1e-9);
        Assert.Equal(most, TripCurves.SecondsAt(curve, multiple), 1e-9);
    }

    [Fact]
    public void Two_like_devices_in_a_row_do_not_discriminate() =>
        Assert.All(
            [FuseCurve.Quick, FuseCurve.TimeLag, FuseCurve.Blade, FuseCurve.BreakerB, FuseCurve.BreakerC],
            curve => Assert.InRange(Discrimination.UpTo(curve, 6, curve, 6), 0, 1.6 * 6));

    [Fact]
    public void The_larger_the_farther_device_the_longer_the_nearer_acts_first()
    {
        var limits = new[] { 6.3, 10, 16, 25, 40 }.Select(far => Discrimination.UpTo(FuseCurve.TimeLag, far, FuseCurve.Quick, 2)).ToArray();
        Assert.All(limits.Zip(limits.Skip(1)), pair => Assert.True(pair.First <= pair.Second));
    }

    // 24 V, 10 A over 2 m there and 2 m back of 0.75 mm² class 5 (26.0 Ω/km, IEC 60228): 1.040 V at 20 °C, 1.2444 V at 70 °C.
    [Fact]
    public void The_lost_voltage_is_that_of_IEC_60228_resistances_at_70_degrees() =>
        Assert.Equal(1.2444, LostVoltage.OnWarmCopper(4, 0.75, 10), 1e-4);

    // Handbook formula of IEC 60364-5-52 annex G, u = 2 · 0.0225 · L/S · I at cos φ = 1: 3 m of 1.5 mm² at 4.35 A lose 0.3915 V, 10 m at 10 A 3.000 V. It takes copper
    // at its mean temperature in use and solid; ours is the flexible conductor at its limit, and lies on the safe side by less than a tenth.
    [Theory]
    [InlineData(3, 4.35, 0.3915)]
    [InlineData(10, 10, 3.000)]
    public void The_lost_voltage_lies_on_the_safe_side_of_the_handbook(double metres, double amperes, double volts) =>
        Assert.InRange(LostVoltage.OnWarmCopper(2 * metres, 1.5, amperes), volts, 1.1 * volts);

    // Worked example of a relay maker's note: 10 W at 45 °C through 1.2 + 0.2 + 2.0 K/W; for 115 °C the sink may have 5.6 K/W. And 12.8 W at 40 °C through 1.5 + 0.1 + 2.5 K/W.
    [Fact]
    public void The_heat_sink_gives_the_worked_examples()
    {
        Assert.Equal(79, HeatSink.Junction(45, 10, 1.2, 0.2, 2.0), 1e-9);
        Assert.Equal(92.48, HeatSink.Junction(40, 12.8, 1.5, 0.1, 2.5), 1e-9);
        Assert.Equal(5.6, HeatSink.MostSinkToAir(115, 45, 10, 1.2, 0.2), 1e-9);
    }
}
