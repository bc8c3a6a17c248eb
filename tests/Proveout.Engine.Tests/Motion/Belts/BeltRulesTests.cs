using Proveout.Engine.Machine;
using Proveout.Engine.Motion;
using Proveout.Engine.Tests.Samples;
using UnitsNet;

namespace Proveout.Engine.Tests.Motion.Belts;

public sealed class BeltRulesTests
{
    private static readonly MotionDesign Motion = Repository.Design("alderbrook").Motion;

    [Fact]
    public void The_sample_has_no_finding() => Assert.Empty(BeltRules.Review(Motion).Select(finding => finding.Sentence));

    [Fact]
    public void A_span_that_is_not_parallel_to_its_axis_changes_the_length() =>
        Assert.Contains("length-changes", Rules(Belt("upper", belt => belt with { Path = [.. belt.Path.Where(point => point.At != "beam-left-upper")] })));

    [Fact]
    public void A_belt_turned_over_has_its_back_on_teeth_and_its_teeth_on_a_small_smooth_idler()
    {
        var rules = Rules(Belt("upper", belt => belt with { Teeth = BeltSide.Left }));

        Assert.Contains("back-on-teeth", rules);
        Assert.Contains("teeth-on-smooth", rules);
        Assert.Contains("motor-idle", rules);
    }

    [Fact]
    public void Pulleys_of_other_heights_make_a_slope() =>
        Assert.Contains("heights-differ", Rules(Motion with { Pulleys = [.. Motion.Pulleys.Select(pulley => pulley.Name == "pulley-m1" ? pulley with { Height = Length.FromMillimeters(22) } : pulley)] }));

    [Fact]
    public void Both_belts_in_one_height_rub_on_each_others_pulleys()
    {
        MotionDesign level = Motion with
        {
            Pulleys = [.. Motion.Pulleys.Select(pulley => pulley.Plane == "deck" ? pulley with { Height = Length.Zero } : pulley)],
            Anchors = [.. Motion.Anchors.Select(anchor => anchor.Plane == "deck" ? anchor with { Height = Length.Zero } : anchor)],
        };

        Assert.Contains("belt-rubs", Rules(level));
    }

    [Fact]
    public void Spans_of_one_height_that_cross_are_said()
    {
        Riding At(double millimetres) => new(Length.FromMillimeters(millimetres), []);
        BeltAnchor End(string name, double across, double up) => new(name, "flat", At(across), At(up), Length.Zero);
        Belt Between(string name, string from, string to) =>
            new(name, false, Length.FromMillimeters(2), Length.FromMillimeters(6), BeltSide.Left, [new(from, BeltTurn.None, false), new(to, BeltTurn.None, false)]);

        Assert.Contains("belts-cross", Rules(new([], [], [End("a", 0, 0), End("b", 10, 10), End("c", 0, 10), End("d", 10, 0)], [Between("one", "a", "b"), Between("two", "c", "d")], [])));
        Assert.DoesNotContain("belts-cross", Rules(new([], [], [End("a", 0, 0), End("b", 10, 10), End("c", 20, 10), End("d", 30, 0)], [Between("one", "a", "b"), Between("two", "c", "d")], [])));
    }

    [Fact]
    public void A_loop_of_no_whole_number_of_teeth_is_said() =>
        Assert.Contains("loop-not-whole", Rules(Motion with { Pulleys = [.. Motion.Pulleys.Select(pulley => pulley.Name == "pulley-m3" ? pulley with { Across = new(Length.FromMillimeters(-67.8), []) } : pulley)] }));

    [Fact]
    public void An_axis_without_a_motor_is_said() => Assert.Contains("axis-loose", Rules(Motion with { Axes = [.. Motion.Axes, new("w", Length.Zero, Length.FromMillimeters(10))] }));

    [Fact]
    public void An_open_belt_is_cut_to_whole_teeth_with_both_tails_and_trimmed_to_a_rest()
    {
        var length = BeltLength.Of(Motion, Motion.Belts.First(belt => belt.Name == "upper"));
        var cut = BeltCut.Of(length);

        Assert.InRange(cut.CutMm - length.LongestMm, 79.9, 82);
        Assert.Equal(0, cut.CutMm % 2, 9);
        Assert.Equal(30, cut.TrimMm, 9);
    }

    [Fact]
    public void A_loop_keeps_its_whole_number_of_teeth() =>
        Assert.Equal((120, 240.0, 0.0), BeltCut.Of(BeltLength.Of(Motion, Motion.Belts.First(belt => belt.Closed))) is var cut ? (cut.Teeth, cut.CutMm, cut.TrimMm) : default);

    private static IEnumerable<string> Rules(MotionDesign motion) => BeltRules.Review(motion).Select(finding => finding.Rule);

    private static MotionDesign Belt(string name, Func<Belt, Belt> change) => Motion with { Belts = [.. Motion.Belts.Select(belt => belt.Name == name ? change(belt) : belt)] };
}
