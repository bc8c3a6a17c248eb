using FsCheck;
using FsCheck.Fluent;
using MathNet.Numerics.Statistics;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

public sealed class ExtremeDeviatesTests
{
    // The 54 readings that Rosner works through (Technometrics 25 (1983) 165-172), as NIST/SEMATECH e-Handbook 1.3.5.17.3 prints them.
    private static readonly double[] Rosner =
    [
        -0.25, 0.68, 0.94, 1.15, 1.20, 1.26, 1.26, 1.34, 1.38, 1.43, 1.49, 1.49, 1.55, 1.56, 1.58, 1.65, 1.69, 1.70, 1.76, 1.77, 1.81, 1.91, 1.94, 1.96,
        1.99, 2.06, 2.09, 2.10, 2.14, 2.15, 2.23, 2.24, 2.26, 2.35, 2.37, 2.40, 2.47, 2.54, 2.62, 2.64, 2.90, 2.92, 2.92, 2.93, 3.21, 3.26, 3.30, 3.59,
        3.68, 4.30, 4.64, 5.34, 5.42, 6.01,
    ];

    [Fact]
    public void The_worked_example_of_the_test_has_three_outliers() =>
        Assert.Equal([6.01, 5.42, 5.34], ExtremeDeviates.Find(Rosner, 0, significance: 0.05, most: 10).Select(index => Rosner[index]));

    [Theory]
    [InlineData(54, 3.158)]
    [InlineData(52, 3.143)]
    [InlineData(45, 3.085)]
    public void What_chance_explains_is_as_the_worked_example_prints_it(int count, double critical) =>
        Assert.Equal(critical, ExtremeDeviates.Critical(count, 0.05), 0.001);

    // Grubbs' test is the case of one outlier: ISO 5725-2:1994, table 5, at 1 % (6, 10, 20 readings).
    [Theory]
    [InlineData(6, 1.973)]
    [InlineData(10, 2.482)]
    [InlineData(20, 3.001)]
    public void One_outlier_is_judged_as_the_table_of_Grubbs_does(int count, double critical) =>
        Assert.Equal(critical, ExtremeDeviates.Critical(count, 0.01), 0.001);

    [Fact]
    public void Of_fewer_than_five_sisters_nothing_is_said() => Assert.Null(ExtremeDeviates.Find([1, 1, 1, 1, 9], 0));

    [Fact]
    public void A_reading_far_from_five_sisters_stands_out() => Assert.Equal([3], ExtremeDeviates.Find([1.00, 1.01, 0.99, 1.40, 1.02, 1.00], 0.01));

    [Fact]
    public void Readings_that_differ_by_less_than_the_instrument_tells_do_not_stand_out() =>
        Assert.Empty(ExtremeDeviates.Find([1.0, 1.0, 1.0, 1.0, 1.0, 1.1], uncertainty: 0.1)!);

    [Fact]
    public void Two_that_are_off_alike_do_not_hide_each_other()
    {
        double[] readings = [.. Enumerable.Range(0, 20).Select(index => 10 + (0.01 * (index % 5))), 14, 14];
        Assert.Equal([20, 21], ExtremeDeviates.Find(readings, 0.01)!.Order());
    }

    [Fact]
    public void A_reading_a_million_times_too_high_does_not_hide_one_that_is_a_little_off()
    {
        double[] readings = [.. Enumerable.Range(0, 20).Select(index => 1 + (1e-6 * (index % 5))), 1.001, 1e9];
        Assert.Equal([20, 21], ExtremeDeviates.Find(readings, 0)!.Order());
    }

    [Fact]
    public void A_reading_is_suspected_in_one_of_a_hundred_sound_series()
    {
        var random = new Random(7);
        foreach (var count in new[] { 6, 10, 25, 100 })
        {
            var suspected = Enumerable.Range(0, 4000).Count(_ => ExtremeDeviates.Find([.. Enumerable.Range(0, count).Select(_ => Normal(random))], 0)!.Count > 0);
            // 40 expected, +-4 standard deviations of the binomial; the test is a little liberal below 25 readings (Rosner, table 3).
            Assert.InRange(suspected, 15, 75);
        }
    }

    [Fact]
    public void Which_stand_out_depends_on_neither_scale_nor_place_nor_order() => Check.One(
        Config.QuickThrowOnFailure.WithMaxTest(200),
        Prop.ForAll(
            ArbMap.Default.ArbFor<int>(),
            seed =>
            {
                var random = new Random(seed);
                double[] readings = [.. Enumerable.Range(0, 30).Select(index => Normal(random) + (index < 3 ? 8 * random.NextDouble() : 0))];
                int[] shuffled = [.. Enumerable.Range(0, 30)];
                random.Shuffle(shuffled);
                var plain = ExtremeDeviates.Find(readings, 0.1)!;
                var moved = ExtremeDeviates.Find([.. shuffled.Select(index => (1024 * readings[index]) + 4096)], 102.4)!;
                return plain.SequenceEqual(moved.Select(index => shuffled[index]));
            }));

    [Fact]
    public void Median_and_spread_agree_with_a_general_library() => Check.One(
        Config.QuickThrowOnFailure.WithMaxTest(100),
        Prop.ForAll(
            ArbMap.Default.ArbFor<int>(),
            seed =>
            {
                var random = new Random(seed);
                double[] readings = [.. Enumerable.Range(0, random.Next(1, 60)).Select(_ => Normal(random))];
                var spread = RobustSpread.Of(readings)!.Value;
                var median = readings.Median();
                return Math.Abs(spread.Median - median) < 1e-12
                    && Math.Abs(spread.Deviation - (1.4826 * readings.Select(reading => Math.Abs(reading - median)).Median())) < 1e-12;
            }));

    [Fact]
    public void Of_no_reading_there_is_no_spread() => Assert.Null(RobustSpread.Of([]));

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
