using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

/// <summary>Whether stated uncertainties hold what they state: many seeded measurements of a known truth (as JCGM 101:2008 does it).</summary>
public sealed class PieceCoverageTests
{
    private const int Trials = 500;

    [Theory]
    [InlineData(0.01, 0.03, 16)]
    [InlineData(0.05, 0.02, 16)]
    [InlineData(0.01, 0.03, 8)]
    [InlineData(0.01, 0.03, 6)]
    public void Scales_skew_and_growth_lie_within_their_expanded_uncertainty_in_95_of_100_cases(double step, double scatter, int measures)
    {
        var random = new Random(20);
        var piece = PieceSample.Piece();
        PieceDistortion truth = new(1.003, 0.998, SkewXY: 0.0012);
        var stated = Calliper.Unchecked(step, 0.03);
        PieceQuantity[] quantities = [PieceQuantity.ScaleX, PieceQuantity.ScaleY, PieceQuantity.SkewXY, PieceQuantity.Walls];
        double[] values = [0.003, -0.002, 0.0012, 0.12];
        var held = new int[values.Length];
        for (var trial = 0; trial < Trials; trial++)
        {
            var (zero, jaws, scale) = (PieceSample.Within(random, 0.03), PieceSample.Within(random, 0.03), PieceSample.Within(random, 0.03 / 150));
            PieceReading[] readings =
            [
                .. PieceSample.Readings(piece, truth, 0.12, measure => zero + (scale * measure.NominalMm) + (measure.Grip == PieceGrip.Inside ? jaws : 0) + PieceSample.Normal(random, scatter), measure => measure.Number <= measures)
                    .Select(reading => reading with { Millimetres = Math.Round(reading.Millimetres / step) * step }),
            ];
            var fit = PieceFit.Of(piece, readings, PieceSample.Doubt(stated, repeat: scatter)).Fit!;
            foreach (var (index, quantity) in quantities.Index())
                held[index] += fit.Of(quantity).DiffersFrom(values[index]) ? 0 : 1;
        }

        Assert.All(held, count => Assert.InRange(count / (double)Trials, 0.925, 0.99));
    }

    [Fact]
    public void A_square_piece_is_called_skewed_in_no_more_than_5_of_100_cases()
    {
        var random = new Random(21);
        var piece = PieceSample.Piece();
        var wrong = 0;
        for (var trial = 0; trial < Trials; trial++)
            wrong += PieceFit.Of(piece, PieceSample.Readings(piece, new(), 0.1, _ => PieceSample.Normal(random, 0.04), PieceSample.IsRing), PieceSample.Doubt()).Fit!.Of(PieceQuantity.SkewXY).DiffersFrom(0) ? 1 : 0;

        Assert.InRange(wrong / (double)Trials, 0.02, 0.08);
    }

    [Theory]
    [InlineData(3, 0.4)]
    [InlineData(8, 0.4)]
    public void What_a_feeder_took_lies_within_its_expanded_uncertainty(int runs, double scatter)
    {
        var random = new Random(22);
        var held = 0;
        for (var trial = 0; trial < 1500; trial++)
        {
            var rule = PieceSample.Within(random, 0.3);
            double[] fed = [.. Enumerable.Range(0, runs).Select(_ => Math.Round((98 + rule + PieceSample.Normal(random, scatter)) / 0.5) * 0.5)];
            held += FilamentFeed.Of(fed, 100, 0.5, 0.3).FedMm.DiffersFrom(98) ? 0 : 1;
        }

        Assert.InRange(held / 1500.0, 0.94, 1);
    }

    [Fact]
    public void The_flow_lies_within_its_expanded_uncertainty()
    {
        var random = new Random(23);
        var held = 0;
        const double Truth = 0.48;
        var wanted = (0.45 - (0.2 * (1 - (Math.PI / 4)))) / (Truth - (0.2 * (1 - (Math.PI / 4))));
        for (var trial = 0; trial < 1500; trial++)
        {
            var zero = PieceSample.Within(random, 0.02);
            double[] places = [.. Enumerable.Range(0, 6).Select(_ => Math.Round((Truth + zero + PieceSample.Normal(random, 0.015)) / 0.01) * 0.01)];
            held += WallFlow.Of(places, PieceSample.Plain, 0.45, 0.2).Factor.DiffersFrom(wanted) ? 0 : 1;
        }

        Assert.InRange(held / 1500.0, 0.94, 0.99);
    }
}
