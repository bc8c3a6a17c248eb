using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Electrical;

namespace Proveout.Engine.Tests.Electrical.Network;

/// <summary>Ports that are passed over because other junctions and insulation cannot move what they read.</summary>
public sealed class StrayShiftTests
{
    private const double Amperes = ElementBand.TestCurrentAmperes;
    private const double UnseenShare = 1e-7;

    private static readonly Gen<double> Siemens = Gen.Frequency((1, Gen.Constant(0.0)), (4, Gen.Choose(-9000, -4000).Select(exponent => Math.Pow(10, exponent / 1000.0))));

    private static readonly Gen<double> ForwardVolts = Gen.Elements(0.2, 0.5, 1.6, double.PositiveInfinity);

    private static readonly Gen<double> Ohms = Gen.Choose(0, 7000).Select(exponent => Math.Pow(10, exponent / 1000.0));

    // Three pieces of one group: the island, another beside it, and what is left of the island.
    private static readonly Arbitrary<Case> Any = Arb.From(
        from leakage in Siemens.ArrayOf(2)
        from left in Gen.OneOf(Siemens, Gen.Choose(-9000, 9000).Select(part => leakage[0] * (1 + (part * 1e-12))))
        from volts in ForwardVolts.ArrayOf(3)
        from isClipAsBefore in Gen.Elements(true, false)
        from ohms in Ohms
        from isInGroup in Gen.Elements(true, true, false)
        select new Case([leakage[0], leakage[1], left], [volts[0], volts[1], isClipAsBefore ? volts[0] : volts[2]], ohms, isInGroup));

    [Fact]
    public void A_closed_port_that_is_passed_over_reads_the_same() => Check.One(Config.QuickThrowOnFailure.WithMaxTest(5000), Prop.ForAll(Any, item =>
        item.Shift.Moves(item.Ohms, UnseenShare / item.Ohms)
        || PortWorker.Same(item.Pieces.LowerLimit(item.Ohms, 0, 0), item.Pieces.LowerLimit(item.Ohms, 2, 2), UnseenShare * (1 + 1e-6))));

    [Fact]
    public void An_open_port_that_is_passed_over_reads_the_same() => Check.One(Config.QuickThrowOnFailure.WithMaxTest(5000), Prop.ForAll(Any, item =>
        item.Shift.MovesOpen(item.Pieces.LeastOhms(double.PositiveInfinity, 1))
        || item.Pieces.LowerLimit(double.PositiveInfinity, 0, 1).Equals(item.Pieces.LowerLimit(double.PositiveInfinity, 2, 1))));

    [Fact]
    public void A_port_beside_a_small_leak_is_passed_over_and_one_of_a_megohm_is_not()
    {
        var pieces = new StrayPieces([1e-8, 1e-9], [0, 0], [double.PositiveInfinity, double.PositiveInfinity], (_, _) => 0);
        var shift = new StrayShift(pieces, 0, pieces, 1, Amperes);

        Assert.False(shift.Moves(1, UnseenShare / 1));
        Assert.True(shift.Moves(1e6, UnseenShare / 1e6));
    }

    [Fact]
    public void A_load_that_a_junction_clips_before_and_after_is_passed_over()
    {
        var pieces = new StrayPieces([1e-6, 1e-9], [0, 0], [0.5, 0.5], (_, _) => 0);

        Assert.False(new StrayShift(pieces, 0, pieces, 1, Amperes).Moves(1e5, UnseenShare / 1e5));
        Assert.False(new StrayShift(pieces, 0, pieces, 1, Amperes).MovesOpen(1e9));
        Assert.True(new StrayShift(pieces, 0, pieces, 1, Amperes).MovesOpen(100));
    }

    private sealed record Case(double[] Leakage, double[] Volts, double Ohms, bool IsInGroup)
    {
        public StrayPieces Pieces { get; } = new(Leakage, [0, 0, IsInGroup ? 0 : 2], Volts, (_, _) => 0);

        public StrayShift Shift => new(Pieces, 0, Pieces, 2, Amperes);
    }
}
