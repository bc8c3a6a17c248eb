using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class PieceBudgetTests
{
    // JCGM 100:2008, H.1: calibration of an end gauge of 50 mm, in nm.
    private static readonly UncertaintyBudget EndGauge = new(50_000_838,
    [
        new("standard", 25, 1, 18),
        new("repeated observations", 5.8, 1, 24),
        new("random effects of the comparator", 3.9, 1, 5),
        new("systematic effects of the comparator", 6.7, 1, 8),
        new("difference of expansion", 1e-6 / Math.Sqrt(3) * 1e6, 50.000623 * 0.1, 50),
        new("difference of temperature", 0.05 / Math.Sqrt(3), 50_000_623 * 11.5e-6, 2),
    ]);

    [Fact]
    public void The_end_gauge_of_the_guide_has_its_published_uncertainty()
    {
        Assert.Equal(32, EndGauge.Standard, 0);
        Assert.Equal(31.66, EndGauge.Standard, 2);
        Assert.Equal(16.75, EndGauge.EffectiveDegrees, 1);
        Assert.Equal(2.92, EndGauge.FactorAt(0.99), 2);
        Assert.InRange(EndGauge.FactorAt(0.99) * EndGauge.Standard, 92, 93);
    }

    [Fact]
    public void Measuring_again_shrinks_what_scatters_and_nothing_else()
    {
        UncertaintyBudget budget = new(0.1, [new("readings", 0.05, 1, 4), new("zero", 0.01)]);

        Assert.Equal(Math.Sqrt((0.05 * 0.05 / 9) + (0.01 * 0.01)), budget.Repeated(9).Standard, 12);
        var times = budget.TimesToReach(0.05)!.Value;
        Assert.True(budget.Repeated(times).Expanded < 0.05);
        Assert.True(budget.Repeated(times - 1).Expanded >= 0.05);
        // The zero alone is wider than this.
        Assert.Null(budget.TimesToReach(0.019));
    }

    // 120 mm marked, 100 mm told; runs of 97, 98 and 97.5 mm: mean 97.5, s 0.5, s/√3 0.2887; the rule 0.3/√3 = 0.1732.
    [Fact]
    public void A_feeder_that_takes_too_little_is_told_with_its_steps()
    {
        var feed = FilamentFeed.Of([97, 98, 97.5], 100, 0.5, 0.3);

        Assert.Equal(97.5, feed.FedMm.Value, 9);
        Assert.Equal(Math.Sqrt((0.25 / 3) + 0.03), feed.FedMm.Standard, 9);
        // ν = (0.08333 + 0.03)² / (0.08333²/2) = 3.70, so t(3) = 3.182 (table G.2): 3.182 × 0.3366 = 1.071 < 2.5.
        Assert.Equal(1.0713, feed.FedMm.Expanded, 3);
        Assert.True(feed.IsReal);
        Assert.Equal(400 * 100 / 97.5, feed.Steps(400).Value, 9);
        Assert.Equal(feed.FedMm.Standard / 97.5, feed.Steps(400).Standard / feed.Steps(400).Value, 9);
    }

    [Fact]
    public void A_feeder_within_the_noise_of_measuring_is_left_alone()
    {
        Assert.False(FilamentFeed.Of([99, 100.5, 99.5], 100, 1, 0.3).IsReal);
        // One run says nothing of how well it repeats: the division alone is counted.
        Assert.Equal(1 / Math.Sqrt(6), FilamentFeed.Of([99], 100, 1, 0).FedMm.Standard, 9);
    }

    [Fact]
    public void A_wall_that_is_too_thick_asks_for_less_flow_by_its_section()
    {
        var flow = WallFlow.Of([0.50, 0.51, 0.50, 0.49, 0.50, 0.50], PieceSample.Plain, 0.45, 0.2);

        // (w - h + πh/4): 0.407080 wanted, 0.457080 found.
        Assert.Equal(0.40708 / 0.45708, flow.Factor.Value, 5);
        Assert.True(flow.IsReal);
        Assert.Null(flow.OddPlace);
        // Zero within 0.02 mm, readings s/√6 = 0.0063/√6, step 0.01/√12.
        Assert.Equal(Math.Sqrt((0.02 * 0.02 / 3) + (0.0004 / 10 / 6) + (1e-4 / 12)), flow.ThicknessMm.Standard, 4);
    }

    [Fact]
    public void A_seam_among_the_places_is_noticed() => Assert.Equal(3, WallFlow.Of([0.45, 0.46, 0.45, 0.62, 0.45, 0.46, 0.45], PieceSample.Plain, 0.45, 0.2).OddPlace);

    [Fact]
    public void A_calliper_is_checked_for_zero_scale_and_the_way_of_holding()
    {
        var check = CalliperCheck.Of(PieceSample.Plain, [0.03, 0.03, 0.03], new Uncertain(50, 0.0005), [50.08, 50.08, 50.08], [50.06, 50.06, 50.06]);

        Assert.Equal(0.03, check.Zero.Value, 9);
        Assert.True(check.Zero.DiffersFrom(0));
        Assert.Equal(0.02, check.Reversal!.Value, 9);
        // 50.07 - 0.03 - 50.
        Assert.Equal(0.04, check.Length!.Value, 9);
        Assert.Equal(50, check.Found.Corrected(50.07, PieceGrip.Outside), 3);
        Assert.True(check.Found.Zero.Standard < PieceSample.Plain.Zero.Standard);
    }

    // 100 mm of plastic (70e-6/K) at 40 °C read with steel (11.5e-6/K) at 25 °C: 1.0000575/1.0014 - 1.
    [Fact]
    public void A_warm_piece_is_longer_than_it_will_be()
    {
        Warmth warm = new(new(40, 1), new(25, 1), Uncertain.Within(70e-6, 20e-6), Warmth.SteelExpansion);

        Assert.Equal(-0.0013406, warm.Correction.Value, 7);
        Assert.Equal(Math.Sqrt(Math.Pow(20 * 20e-6 / Math.Sqrt(3), 2) + Math.Pow(70e-6, 2) + Math.Pow(5 * 2e-6 / Math.Sqrt(3), 2) + Math.Pow(11.5e-6, 2)), warm.Correction.Standard, 9);
    }
}
