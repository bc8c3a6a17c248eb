namespace Proveout.Workshop.Tests;

public sealed class MotorSheetTests
{
    private static readonly (string, string)[] Example =
    [
        ("teeth", "20"), ("current", "1.68"), ("resistance", "1,65 ohm"), ("inductance", "2.8"), ("holding-torque", "0.44"), ("share", "100"), ("supply", "24"),
    ];

    [Fact]
    public void The_plate_of_a_motor_gives_steps_currents_and_corner()
    {
        // Shared reference values, 6: 80 steps/mm, peak 2.375879 A, corner 365.34 mm/s.
        var sheet = Of(Example);
        Assert.Equal(80, sheet.Steps.StepsByMillimetre, 9);
        Assert.Equal(2.375879, sheet.Current!.PeakAmperes, 6);
        Assert.Equal(365.34, sheet.Curve!.CornerMillimetresPerSecond, 2);
        Assert.Null(sheet.Load);
        Assert.Contains(MotorWords.Rows(sheet), row => row.Figure.Contains("1.68 A where the driver asks for r.m.s., 2.37 A where it asks for peak", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("5", "300", "enough")]
    [InlineData("40", "300", "thin")]
    [InlineData("40", "740", "loses-steps")]
    public void A_movement_is_held_against_the_torque_at_its_speed(string acceleration, string speed, string verdict) =>
        Assert.Equal(verdict, Of([.. Example, ("mass", "0.8"), ("acceleration", acceleration), ("speed", speed)]).Load!.Verdict);

    [Fact]
    public void Twice_the_torque_is_in_hand_at_the_speed_that_is_told()
    {
        var first = Of([.. Example, ("mass", "0.5"), ("acceleration", "10"), ("speed", "300")]).Load!;
        var second = Of([.. Example, ("mass", "0.5"), ("acceleration", "10"), ("speed", first.HighestSpeed.ToString("R", System.Globalization.CultureInfo.InvariantCulture))]).Load!;
        Assert.Equal(2, second.Ratio, 6);
    }

    [Fact]
    public void A_supply_too_weak_for_the_resistance_is_said() =>
        Assert.False(Of([.. Example.Where(item => item.Item1 != "supply"), ("supply", "3")]).Curve!.HoldsCurrent);

    [Fact]
    public void A_screw_alone_gives_its_steps() => Assert.Equal(400, Of(("lead", "8")).Steps.StepsByMillimetre, 9);

    [Fact]
    public void The_belt_gives_a_resonance_over_the_travel()
    {
        var resonance = Of([.. Example, ("mass", "0.4"), ("belt-stiffness", "10000"), ("loop", "1000"), ("travel", "600"), ("shortest-run", "100")]).Resonance!;
        Assert.Equal(50.3292, resonance.LowestHertz, 4);
        Assert.Null(resonance.GiveMillimetres);
    }

    [Theory]
    [InlineData("pulley-or-screw")]
    [InlineData("pulley-or-screw", "teeth", "20", "lead", "8")]
    [InlineData("not-whole", "teeth", "20.5")]
    [InlineData("missing-figure", "teeth", "20", "current", "1.5")]
    [InlineData("missing-figure", "teeth", "20", "belt-stiffness", "10000", "loop", "1000", "travel", "300")]
    [InlineData("loop-too-short", "teeth", "20", "mass", "1", "belt-stiffness", "10000", "loop", "300", "travel", "300")]
    [InlineData("not-a-figure", "teeth", "twenty")]
    [InlineData("out-of-range", "teeth", "20", "step-angle", "0")]
    public void What_is_wrong_is_said(string rule, params string[] typed) =>
        Assert.Contains(
            MotorSheet.Of(typed.Chunk(2).ToDictionary(pair => pair[0], pair => pair[1])).Diagnostics,
            diagnostic => diagnostic.Rule == rule && diagnostic.Mend.Length > 0);

    private static MotorView Of(params (string Field, string Text)[] typed) =>
        Assert.IsType<MotorView>(MotorSheet.Of(typed.ToDictionary(item => item.Field, item => item.Text)).Value);
}
