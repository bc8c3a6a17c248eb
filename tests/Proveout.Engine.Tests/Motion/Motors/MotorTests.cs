using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Motion;
using UnitsNet;

namespace Proveout.Engine.Tests.Motion;

/// <summary>Worked examples of the shared reference values, section 6, computed there with numpy.</summary>
public sealed class MotorTests
{
    private static readonly Angle Usual = Angle.FromDegrees(1.8);

    private static readonly StepperRating Example = new(
        ElectricCurrent.FromAmperes(1.68), ElectricResistance.FromOhms(1.65), ElectricInductance.FromMillihenries(2.8), Torque.FromNewtonMeters(0.44), Usual, MassMomentOfInertia.Zero);

    [Theory]
    [InlineData(1.8, 16, 20, 80)]
    [InlineData(1.8, 16, 16, 100)]
    [InlineData(0.9, 16, 20, 160)]
    [InlineData(1.8, 256, 20, 1280)]
    public void Steps_for_each_millimetre_of_a_belt(double degrees, int microsteps, int teeth, double steps) =>
        Assert.Equal(steps, AxisDrive.Belt(Angle.FromDegrees(degrees), microsteps, teeth, Length.FromMillimeters(2)).StepsByMillimetre, 9);

    [Theory]
    [InlineData(16, 8, 400)]
    [InlineData(16, 2, 1600)]
    [InlineData(64, 8, 1600)]
    public void Steps_for_each_millimetre_of_a_screw(int microsteps, double lead, double steps) =>
        Assert.Equal(steps, AxisDrive.Screw(Usual, microsteps, Length.FromMillimeters(lead)).StepsByMillimetre, 9);

    [Fact]
    public void A_gear_multiplies_the_steps() =>
        Assert.Equal(240, AxisDrive.Belt(Usual, 16, 20, Length.FromMillimeters(2), gearRatio: 3).StepsByMillimetre, 9);

    [Fact]
    public void The_torque_constant_is_the_holding_torque_over_the_rated_peak()
    {
        Assert.Equal(0.185195, Example.TorqueConstant, 6);
        Assert.Equal(2.375879, Example.RatedPeakAmperes, 6);
        Assert.Equal(50, Example.PolePairs, 9);
    }

    [Theory]
    [InlineData(12, 25.20023)]
    [InlineData(24, 57.38677)]
    [InlineData(36, 89.12369)]
    [InlineData(48, 120.75185)]
    public void Torque_collapses_from_the_speed_at_which_the_current_can_no_longer_be_driven(double volts, double radians)
    {
        var drive = Drive(volts);
        Assert.Equal(radians, drive.CornerRadiansPerSecond, 4);
        Assert.Equal(0.44, drive.TorqueAt(0.99 * radians), 9);
        Assert.True(drive.TorqueAt(1.05 * radians) < 0.43);
    }

    [Fact]
    public void The_corner_speed_of_an_axis_follows_from_its_travel_by_turn() =>
        Assert.Equal(0.36534, AxisDrive.Belt(Usual, 16, 20, Length.FromMillimeters(2)).MetresPerSecond(Drive(24).CornerRadiansPerSecond), 5);

    [Fact]
    public void The_voltage_at_five_turns_a_second_is_what_the_circuit_needs()
    {
        // 14.28388 V at 5 rev/s drive just the rated peak.
        Assert.Equal(10 * Math.PI, Drive(14.28388).CornerRadiansPerSecond, 4);
    }

    [Fact]
    public void A_supply_too_weak_for_the_resistance_has_no_corner()
    {
        Assert.False(Drive(3).HoldsCurrent);
        Assert.Equal(0, Drive(3).CornerRadiansPerSecond);
        Assert.Equal(3 / 1.65, Drive(3).PeakAt(0), 9);
    }

    [Fact]
    public void Torque_never_rises_with_speed_and_ends_where_the_back_EMF_is_the_supply() => Prop.ForAll<ushort, ushort>((volts, speed) =>
    {
        var drive = Drive(8 + (volts % 40));
        var slow = speed % 300;
        return drive.TorqueAt(slow + 1) <= drive.TorqueAt(slow) + 1e-12 && Math.Abs(drive.TorqueAt(drive.HighestRadiansPerSecond)) < 1e-9;
    }).QuickCheckThrowOnFailure();

    [Fact]
    public void The_speed_for_a_torque_gives_that_torque_back() => Prop.ForAll<ushort>(share =>
    {
        var drive = Drive(24);
        var torque = 0.44 * (1 + (share % 98)) / 100;
        return Math.Abs(drive.TorqueAt(drive.SpeedForTorque(torque) * (1 + 1e-9)) - torque) < 1e-6;
    }).QuickCheckThrowOnFailure();

    [Fact]
    public void A_current_is_said_as_root_mean_square_and_as_peak_and_rounded_down()
    {
        var setting = CurrentSetting.Of(Example, 0.7);
        Assert.Equal(1.176, setting.RmsAmperes, 9);
        Assert.Equal(1.6631, setting.PeakAmperes, 4);
        Assert.Equal("1.17 A where the driver asks for r.m.s., 1.66 A where it asks for peak", setting.Words);
    }

    [Fact]
    public void Both_windings_heat_as_the_formula_says() =>
        // 1.5 A r.m.s., 1.65 ohm: 7.425 W (reference values 6).
        Assert.Equal(7.425, CurrentSetting.Of(Example with { Current = ElectricCurrent.FromAmperes(1.5) }, 1).CopperWatts, 9);

    [Theory]
    [InlineData(0)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void More_than_the_rating_is_not_proposed(double share) =>
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => CurrentSetting.Of(Example, share));

    [Fact]
    public void A_current_rises_as_a_first_order_circuit_lets_it()
    {
        Assert.Equal(251.016e-6, InductiveLimit.RiseSeconds(2.8e-3, 1.65, 24, 2), 9);
        Assert.Equal(double.PositiveInfinity, InductiveLimit.RiseSeconds(2.8e-3, 1.65, 3, 2));
        Assert.Equal(60, InductiveLimit.TurnsPerSecond(10e-3, 12, 10e-3, 1000), 9);
        Assert.Equal(10, InductiveLimit.TurnsPerSecond(3e-3, 24, 2, 200), 9);
    }

    [Fact]
    public void Torque_and_acceleration_of_a_load_are_each_others_inverse()
    {
        var load = new AxisLoad(AxisDrive.Belt(Usual, 16, 20, Length.FromMillimeters(2)), 0.5, 3, 5e-6, 0.9);
        Assert.Equal(7, load.Acceleration(load.Torque(7)), 9);
        Assert.Equal(0, load.Acceleration(0.001));
        // (0.5 kg · 10 m/s²) · 40 mm / 2 pi without friction, inertia or loss.
        Assert.Equal(5 * 0.04 / (2 * Math.PI), (load with { FrictionNewtons = 0, RotorInertia = 0, Efficiency = 1 }).Torque(10), 12);
    }

    [Theory]
    [InlineData(0.1, 0.44, MarginVerdict.Enough)]
    [InlineData(0.3, 0.44, MarginVerdict.Thin)]
    [InlineData(0.5, 0.44, MarginVerdict.LosesSteps)]
    public void A_margin_says_how_near_lost_steps_are(double needed, double available, MarginVerdict verdict) =>
        Assert.Equal(verdict, new LostStepsMargin(needed, available).Verdict);

    [Fact]
    public void The_rotor_lags_one_full_step_at_its_highest_torque()
    {
        Assert.Equal(1, new LostStepsMargin(0.44, 0.44).LagFullSteps!.Value, 9);
        Assert.Equal(1.0 / 3, new LostStepsMargin(0.22, 0.44).LagFullSteps!.Value, 9);
        Assert.Null(new LostStepsMargin(0.45, 0.44).LagFullSteps);
    }

    [Fact]
    public void A_carriage_on_a_belt_is_softest_where_both_ways_are_equal()
    {
        // E A 10 kN, loop 1 m, 0.4 kg: k = 10000 (1/0.5 + 1/0.5) = 40 kN/m, f = sqrt(40000 / 0.4) / 2 pi = 50.329 Hz (one mass, one spring).
        var mass = new BeltDrivenMass(10_000, 1, 0.4);
        Assert.Equal(40_000, mass.Stiffness(0.5), 6);
        Assert.Equal(50.3292, mass.ResonanceHertz(0.5), 4);
        Assert.Equal(mass.ResonanceHertz(0.5), mass.LowestHertz(0.1, 0.9), 12);
        Assert.Equal(mass.ResonanceHertz(0.4), mass.LowestHertz(0.1, 0.4), 12);
        Assert.Equal(0.25e-3, mass.Deflection(0.5, 10), 9);
    }

    [Fact]
    public void The_spring_of_the_motor_lowers_the_resonance()
    {
        var drive = AxisDrive.Belt(Usual, 16, 20, Length.FromMillimeters(2));
        var spring = BeltDrivenMass.MotorSpring(Example, 0.44, drive);
        Assert.Equal(50 * 0.44 * Math.Pow(2 * Math.PI / 0.04, 2), spring, 6);
        Assert.True(new BeltDrivenMass(10_000, 1, 0.4, spring).ResonanceHertz(0.5) < new BeltDrivenMass(10_000, 1, 0.4).ResonanceHertz(0.5));
    }

    private static StepperDrive Drive(double volts) => new(Example, Example.RatedPeakAmperes, ElectricPotential.FromVolts(volts));
}
