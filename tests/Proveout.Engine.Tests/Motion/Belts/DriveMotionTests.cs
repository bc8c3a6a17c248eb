using Proveout.Engine.Machine;
using Proveout.Engine.Motion;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Motion.Belts;

public sealed class DriveMotionTests
{
    private static readonly MotionDesign Motion = Repository.Design("alderbrook").Motion;

    private static readonly DriveMotion Drive = DriveMotion.Of(Motion, AxisPlaces.Middle(Motion));

    [Fact]
    public void A_sound_machine_holds_every_axis_and_locks_none()
    {
        Assert.Empty(Drive.Locks);
        Assert.Empty(Drive.Loose);
        Assert.Empty(Drive.Idle);
    }

    // 20 teeth of 2 mm: 40 mm of belt a turn. One motor pays out with x + y, the other with y - x.
    [Fact]
    public void In_two_crossed_belts_a_turn_of_one_motor_moves_both_axes_by_half_its_belt()
    {
        Assert.Equal((20, 20), (Math.Abs(Round(Drive.MmPerTurn(0, 0))), Math.Abs(Round(Drive.MmPerTurn(1, 0)))));
        Assert.Equal(-1, Math.Sign(Drive.MmPerTurn(0, 0) * Drive.MmPerTurn(1, 0) * Drive.MmPerTurn(0, 1) * Drive.MmPerTurn(1, 1)));
        Assert.False(Drive.IsTied(0));
    }

    // 20 : 80 teeth, then 16 teeth of 2 mm: 8 mm a turn of the motor, and a quarter of it when one of four tries alone.
    [Fact]
    public void Four_lift_motors_turn_together_an_eighth_of_a_turn_for_a_millimetre()
    {
        for (var motor = 2; motor < 6; motor++)
        {
            Assert.Equal(0.125, Drive.TurnsPerMm(motor, 2)!.Value, 6);
            Assert.Equal(2, Drive.MmPerTurn(2, motor), 5);
            Assert.True(Drive.IsTied(motor));
        }
    }

    [Theory]
    [InlineData(10, 20, 30)]
    [InlineData(290, 10, 200)]
    public void Turns_are_the_finite_differences_of_the_length_from_the_first_anchor_to_the_motor(double x, double y, double z)
    {
        var drive = DriveMotion.Of(Motion, [x, y, z]);
        foreach (var (name, motor, sign) in new[] { ("upper", 0, 1), ("lower", 1, -1) })
            for (var axis = 0; axis < 2; axis++)
            {
                double ToMotor(double step) => ToMotorMm(name, [x + (axis == 0 ? step : 0), y + (axis == 1 ? step : 0), z]);
                var paidOut = (ToMotor(1e-3) - ToMotor(-1e-3)) / 2e-3;

                // Belt between anchor and pulley grows as the pulley turns against the belt's bend: to the right at M1, to the left at M2.
                Assert.Equal(sign * paidOut / 40, drive.TurnsPerMm(motor, axis)!.Value, 6);
            }
    }

    [Fact]
    public void A_belt_past_the_wrong_side_of_an_idler_lets_axes_move_only_together()
    {
        var wrong = Motion with
        {
            Belts = [.. Motion.Belts.Select(belt => belt.Name == "upper" ? belt with { Path = [.. belt.Path.Where(point => point.At != "beam-left-upper")] } : belt)],
        };

        Assert.Single(DriveMotion.Of(wrong, AxisPlaces.Middle(wrong)).Locks, held => held.Shares.Count == 2);
    }

    [Fact]
    public void A_screw_moves_its_axis_by_its_lead()
    {
        var screw = new Screw("s", "z", UnitsNet.Length.FromMillimeters(8), new("M9", 2, true, 200));
        var motion = new MotionDesign([Motion.Axes[2]], [], [], [], [screw]);
        var drive = DriveMotion.Of(motion, [100]);

        Assert.Equal(-0.25, drive.TurnsPerMm(0, 0)!.Value, 9);
        Assert.Equal(-4, drive.MmPerTurn(0, 0), 9);
    }

    private static double Round(double millimetres) => Math.Round(millimetres, 3);

    private static double ToMotorMm(string name, ValueList<double> places)
    {
        var path = BeltPath.At(Motion, Motion.Belts.First(belt => belt.Name == name), places)!;
        return path.Spans[0].LengthMm + path.Contacts[0].LengthMm + path.Spans[1].LengthMm;
    }
}
