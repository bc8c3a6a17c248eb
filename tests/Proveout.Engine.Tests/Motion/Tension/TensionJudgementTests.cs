using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class TensionJudgementTests
{
    [Fact]
    public void A_pair_at_112_and_96_hertz_differs_by_the_square_of_the_notes()
    {
        // Trade facts F8: 112 against 96 Hz at one length is a ratio of forces of 1.36.
        var pair = Pair(112, 96, 0.1);
        Assert.Equal(2 * 0.36111 / 2.36111, pair.Difference.Value, 4);
        Assert.Equal(PairVerdict.LeftTighter, pair.Judge());
        Assert.Equal(PairVerdict.RightTighter, Pair(96, 112, 0.1).Judge());
    }

    [Theory]
    [InlineData(110, 111, 0.1, PairVerdict.Equal)]
    [InlineData(110, 111, 4, PairVerdict.CannotTell)]
    [InlineData(110, 114.2, 0.2, PairVerdict.CannotTell)]
    public void A_verdict_minds_the_uncertainty(double left, double right, double standard, PairVerdict verdict) =>
        Assert.Equal(verdict, Pair(left, right, standard).Judge());

    [Fact]
    public void Unequal_spans_are_compared_by_force_not_by_note()
    {
        // Half the length at twice the note is the same force.
        var pair = new BeltPair(new(110, 0.1), new(220, 0.2), new(0.3, 0), new(0.15, 0));
        Assert.Equal(0, pair.Difference.Value, 12);
    }

    [Fact]
    public void The_difference_changes_its_sign_when_the_belts_are_exchanged() => Prop.ForAll<ushort, ushort>((one, other) =>
    {
        var (left, right) = (50.0 + (one % 300), 50.0 + (other % 300));
        var (there, back) = (Pair(left, right, 0.3).Difference, Pair(right, left, 0.3).Difference);
        return Math.Abs(there.Value + back.Value) < 1e-12 && Math.Abs(there.Standard - back.Standard) < 1e-12;
    }).QuickCheckThrowOnFailure();

    [Theory]
    [InlineData(10, 0.2, TensionVerdict.Right)]
    [InlineData(10, 0.8, TensionVerdict.CannotTell)]
    [InlineData(8, 0.3, TensionVerdict.TooLoose)]
    [InlineData(12, 0.3, TensionVerdict.TooTight)]
    [InlineData(8.9, 0.3, TensionVerdict.CannotTell)]
    public void A_force_is_judged_against_its_band_with_its_uncertainty(double newtons, double standard, TensionVerdict verdict) =>
        Assert.Equal(verdict, TensionTarget.Around(10).Judge(new(newtons, standard)));

    [Fact]
    public void A_screw_that_moves_a_pulley_stretches_two_runs()
    {
        // E A 10 kN, 2 m of belt, pitch 0.5 mm: 5 N for each turn of an end, 2.5 N for each mm of stretch (Hooke).
        var pulley = new Tensioner(10_000, 2, 2, 0.0005);
        Assert.Equal(5, pulley.NewtonsByTurn, 9);
        Assert.Equal(2.5, (pulley with { Runs = 1 }).NewtonsByTurn, 9);
        Assert.Equal(1.2, pulley.Turns(4, 10), 9);
        Assert.Equal(-1.2, pulley.Turns(10, 4), 9);
    }

    [Fact]
    public void A_trial_turn_teaches_how_far_to_turn()
    {
        var trial = new TensionerTrial(new(6, 0.1), new(8, 0.1), 0.5);
        Assert.Equal(4, trial.NewtonsByTurn!.Value.Value, 9);
        Assert.Equal(0.5, trial.TurnsTo(10)!.Value, 9);
    }

    [Theory]
    [InlineData(6, 6.1, 0.5)]
    [InlineData(6, 5, 0.5)]
    [InlineData(6, 8, 0)]
    public void A_trial_that_does_not_stand_out_teaches_nothing(double before, double after, double turns) =>
        Assert.Null(new TensionerTrial(new(before, 0.2), new(after, 0.2), turns).TurnsTo(10));

    [Fact]
    public void The_shaft_bears_half_its_radial_limit_at_a_half_turn_of_wrap() =>
        // Trade facts BE07: 28 N radial at 180° is 14 N in each run.
        Assert.Equal(14, TensionLimits.Highest(28, Math.PI), 9);

    [Fact]
    public void The_slack_run_stays_taut_above_half_the_drive_force() =>
        // Trade facts D5: 0.5 kg at 10 m/s² is 5 N, so 2.5 N before any margin.
        Assert.Equal(2.5, TensionLimits.Lowest(0.5, 10, margin: 1), 9);

    [Theory]
    [InlineData(110.2345, 0.0617, "110.23 ± 0.13 Hz")]
    [InlineData(9.1476, 0.5, "9.1 ± 1.0 Hz")]
    [InlineData(1234.5, 60, "1230 ± 120 Hz")]
    [InlineData(0.00812, 0.0001, "0.00812 ± 0.00020 Hz")]
    public void Figures_are_written_with_the_digits_they_are_worth(double value, double standard, string words) =>
        Assert.Equal(words, SensibleDigits.Of(new Uncertain(value, standard), "Hz"));

    [Theory]
    [InlineData(123.456, "123")]
    [InlineData(0.0123456, "0.0123")]
    [InlineData(98765, "98800")]
    [InlineData(0, "0")]
    [InlineData(-2.5, "-2.50")]
    public void Three_digits_are_enough_elsewhere(double value, string words) => Assert.Equal(words, SensibleDigits.Of(value));

    private static BeltPair Pair(double left, double right, double standard) => new(new(left, standard), new(right, standard), new(0.15, 0), new(0.15, 0));
}
