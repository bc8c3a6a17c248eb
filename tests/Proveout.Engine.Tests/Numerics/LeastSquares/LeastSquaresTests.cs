using System.Globalization;
using MathNet.Numerics.LinearAlgebra;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

/// <summary>Certified values: NIST Statistical Reference Datasets, linear regression (Norris, Longley, NoInt1).</summary>
public sealed class LeastSquaresTests
{
    private const string Norris =
        "0.2:0.1 337.4:338.8 118.2:118.1 884.6:888.0 10.1:9.2 226.5:228.1 666.3:668.5 996.3:998.5 448.6:449.1 777.0:778.9 558.2:559.2 0.4:0.3 "
        + "0.6:0.1 775.5:778.1 666.9:668.8 338.0:339.3 447.5:448.9 11.6:10.8 556.0:557.7 228.1:228.3 995.8:998.0 887.6:888.8 120.2:119.6 0.3:0.3 "
        + "0.3:0.6 556.8:557.6 339.1:339.3 887.2:888.0 999.0:998.5 779.0:778.9 11.1:10.2 118.3:117.6 229.2:228.9 669.1:668.4 448.9:449.2 0.5:0.2";

    private const string Longley =
        "83.0,234289,2356,1590,107608,1947;60323 88.5,259426,2325,1456,108632,1948;61122 88.2,258054,3682,1616,109773,1949;60171 89.5,284599,3351,1650,110929,1950;61187 "
        + "96.2,328975,2099,3099,112075,1951;63221 98.1,346999,1932,3594,113270,1952;63639 99.0,365385,1870,3547,115094,1953;64989 100.0,363112,3578,3350,116219,1954;63761 "
        + "101.2,397469,2904,3048,117388,1955;66019 104.6,419180,2822,2857,118734,1956;67857 108.4,442769,2936,2798,120445,1957;68169 110.8,444546,4681,2637,121950,1958;66513 "
        + "112.6,482704,3813,2552,123366,1959;68655 114.2,502601,3931,2514,125368,1960;69564 115.7,518173,4806,2572,127852,1961;69331 116.9,554894,4007,2827,130081,1962;70551";

    [Fact]
    public void The_line_of_Norris_is_the_certified_one()
    {
        var points = Norris.Split(' ').Select(pair => pair.Split(':').Select(Number).ToArray()).ToArray();

        var fit = LeastSquares.Fit([.. points.Select(point => new[] { 1, point[0] })], [.. points.Select(point => point[1])])!;

        Near(-0.262323073774029, fit.Values[0], 1e-11);
        Near(1.00211681802045, fit.Values[1], 1e-12);
        Near(0.884796396144373, fit.Scatter, 1e-11);
        Near(0.232818234301152, fit.Scatter * Math.Sqrt(fit.Cofactors[0, 0]), 1e-11);
        Near(0.429796848199937e-3, fit.Scatter * Math.Sqrt(fit.Cofactors[1, 1]), 1e-11);
    }

    [Fact]
    public void The_ill_conditioned_fit_of_Longley_is_the_certified_one()
    {
        var rows = Longley.Split(' ').Select(row => row.Split(';')).ToArray();
        double[] certified = [-3482258.63459582, 15.0618722713733, -0.358191792925910e-01, -2.02022980381683, -1.03322686717359, -0.511041056535807e-01, 1829.15146461355];

        var fit = LeastSquares.Fit(
            [.. rows.Select(row => (double[])[1, .. row[0].Split(',').Select(Number)])], [.. rows.Select(row => Number(row[1]))])!;

        foreach (var (expected, found) in certified.Zip(fit.Values))
            Near(expected, found, 1e-8);
        Near(304.854073561965, fit.Scatter, 1e-9);
    }

    [Fact]
    public void A_line_through_the_origin_is_the_certified_one()
    {
        var fit = LeastSquares.Fit([.. Enumerable.Range(60, 11).Select(x => new[] { (double)x })], [.. Enumerable.Range(130, 11).Select(y => (double)y)])!;

        Near(2.07438016528926, fit.Values[0], 1e-13);
        Near(0.0165289256198347, fit.Scatter * Math.Sqrt(fit.Cofactors[0, 0]), 1e-12);
        Near(127.272727272727, fit.WeightedSquares, 1e-12);
    }

    // JCGM 100:2008, H.3: calibration of a thermometer by a straight line.
    [Fact]
    public void The_thermometer_of_the_guide_to_uncertainty_comes_out_as_printed()
    {
        double[] celsius = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511];
        double[] corrections = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160];

        var fit = LeastSquares.Fit([.. celsius.Select(t => new[] { 1, t - 20 })], corrections)!;

        Assert.Equal(-0.1712, fit.Values[0], 4);
        Assert.Equal(0.00218, fit.Values[1], 5);
        Assert.Equal(0.0029, fit.Scatter * Math.Sqrt(fit.Cofactors[0, 0]), 4);
        Assert.Equal(0.00067, fit.Scatter * Math.Sqrt(fit.Cofactors[1, 1]), 5);
        Assert.Equal(-0.930, fit.Cofactors[0, 1] / Math.Sqrt(fit.Cofactors[0, 0] * fit.Cofactors[1, 1]), 3);
        Assert.Equal(0.0035, fit.Scatter, 4);
        Assert.Equal(0.0041, fit.Scatter * fit.StandardOf([1, 10]), 4);
    }

    [Fact]
    public void Weighted_fits_agree_with_an_independent_library()
    {
        var random = new Random(11);
        for (var trial = 0; trial < 50; trial++)
        {
            var (rows, columns) = (random.Next(6, 30), random.Next(1, 5));
            double[][] design = [.. Enumerable.Range(0, rows).Select(_ => Enumerable.Range(0, columns).Select(_ => random.NextDouble() - 0.5).ToArray())];
            double[] observed = [.. design.Select(_ => random.NextDouble())];
            double[] standards = [.. design.Select(_ => 0.1 + random.NextDouble())];

            var fit = LeastSquares.Fit(design, observed, standards)!;

            var weights = Matrix<double>.Build.DenseOfDiagonalArray([.. standards.Select(standard => 1 / (standard * standard))]);
            var matrix = Matrix<double>.Build.DenseOfRowArrays(design);
            var normal = (matrix.Transpose() * weights * matrix).Inverse();
            var values = normal * matrix.Transpose() * weights * Vector<double>.Build.DenseOfArray(observed);
            for (var row = 0; row < columns; row++)
            {
                Assert.Equal(values[row], fit.Values[row], 8);
                for (var column = 0; column < columns; column++)
                    Assert.Equal(normal[row, column], fit.Cofactors[row, column], 7);
            }

            Assert.Equal(fit.Degrees, fit.Redundancies.Sum(), 8);
        }
    }

    [Fact]
    public void Observations_that_leave_an_unknown_open_give_no_fit()
    {
        Assert.Null(LeastSquares.Fit([[1, 2], [2, 4], [3, 6]], [1, 2, 3]));
        Assert.Null(LeastSquares.Fit([[1, 2]], [1]));
        Assert.Null(LeastSquares.Fit([[1, 0], [2, 0]], [1, 2]));
    }

    // Student's factors: JCGM 100:2008, table G.2.
    [Theory]
    [InlineData(1, 0.95, 12.706)]
    [InlineData(1, 0.99, 63.657)]
    [InlineData(2, 0.95, 4.303)]
    [InlineData(5, 0.90, 2.015)]
    [InlineData(10, 0.95, 2.228)]
    [InlineData(16, 0.99, 2.921)]
    [InlineData(50, 0.9973, 3.157)]
    [InlineData(100, 0.95, 1.984)]
    public void Students_factors_are_the_tabled_ones(int degrees, double share, double factor) =>
        Assert.Equal(factor, StudentT.Factor(share, degrees), 3);

    // Grubbs' formula with the quantile of an independent library; 1.715 and 2.290 stand in ISO 5725-2:1994, table 5.
    [Fact]
    public void Grubbs_critical_values_agree_with_an_independent_quantile()
    {
        foreach (var count in Enumerable.Range(3, 50))
        {
            var t = MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, count - 2, 1 - (0.05 / (2 * count)));
            Assert.Equal((count - 1) / Math.Sqrt(count) * Math.Sqrt(t * t / (count - 2 + (t * t))), Grubbs.Critical(count), 7);
        }

        Assert.Equal(1.715, Grubbs.Critical(5), 3);
        Assert.Equal(2.290, Grubbs.Critical(10), 3);
    }

    // reference: straightness example of seven places.
    [Fact]
    public void A_minimax_line_has_the_least_zone()
    {
        double[] heights = [0, 0.02, 0.05, 0.04, 0.03, 0.01, 0.02];

        var fit = Minimax.Fit([.. Enumerable.Range(0, 7).Select(index => new[] { 1, 50.0 * index })], heights)!.Value;

        Assert.Equal(0.0460, 2 * fit.Largest, 6);
        Assert.Equal(4e-5, fit.Values[1], 8);
    }

    [Fact]
    public void No_plane_nearby_has_a_smaller_greatest_residual_than_the_minimax_one()
    {
        var random = new Random(5);
        for (var trial = 0; trial < 20; trial++)
        {
            double[][] design = [.. Enumerable.Range(0, 25).Select(_ => new[] { 1, random.NextDouble(), random.NextDouble() })];
            double[] heights = [.. design.Select(_ => random.NextDouble())];
            var (values, largest) = Minimax.Fit(design, heights)!.Value;
            Assert.Equal(largest, Largest(values), 7);
            for (var nearby = 0; nearby < 200; nearby++)
                Assert.True(Largest([.. values.Select(value => value + (0.1 * (random.NextDouble() - 0.5)))]) >= largest - 1e-7);

            double Largest(double[] plane) => design.Zip(heights, (row, height) => Math.Abs(height - row.Zip(plane, (a, b) => a * b).Sum())).Max();
        }
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static void Near(double expected, double found, double relative) =>
        Assert.True(Math.Abs(found - expected) <= relative * Math.Abs(expected), $"{found:R} is not {expected:R} within {relative}");
}
