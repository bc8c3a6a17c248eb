using Proveout.Engine.Numerics;

namespace Proveout.Engine.Heat;

/// <summary>A process fitted to a step of the output, with the uncertainty of each parameter.</summary>
/// <param name="Process">The process.</param>
/// <param name="Rest">What was shown before the step, with its uncertainty.</param>
/// <param name="ResidualDeviation">Standard deviation of what the model leaves, in K.</param>
/// <param name="NeighbourCorrelation">How alike neighbouring residuals are, 0 to 1: near 1 the model misses something, and the uncertainties say so.</param>
/// <param name="SettledShare">Share of the way to the end that the log shows.</param>
/// <remarks>
/// Covariance (JᵀJ)⁻¹ JᵀRJ (JᵀJ)⁻¹ with the correlation R of the residuals: least squares stay unbiased when noise is correlated, but are less certain than they seem
/// (G. A. F. Seber and C. J. Wild, Nonlinear Regression, chapter 6, from memory).
/// </remarks>
public sealed record StepEstimate(ProcessEstimate Process, Estimate Rest, double ResidualDeviation, double NeighbourCorrelation, double SettledShare)
{
    /// <summary>What gain and times are worth is told from so many samples on.</summary>
    public const int FewestSamples = 20;

    // A second time constant is kept when it takes that much off the squares, by the F test at a share of 0.1 % with many degrees of freedom (10.8), and stands out from its own uncertainty.
    private const double Keep = 10.8;

    /// <summary>Fits a process of first order, and one of second order where the log tells it.</summary>
    /// <param name="seconds">Times at equal distances, rising; the step is made at time 0.</param>
    /// <param name="measured">What is shown then.</param>
    /// <param name="step">By how much the output was raised, as a share of full; not zero.</param>
    /// <returns>Null when nothing moves, or there are too few samples.</returns>
    public static StepEstimate? Of(IReadOnlyList<double> seconds, IReadOnlyList<double> measured, double step)
    {
        ArgumentNullException.ThrowIfNull(seconds);
        ArgumentNullException.ThrowIfNull(measured);
        if (seconds.Count(time => time > 0) < FewestSamples || OfOrder(seconds, measured, step, isSecondOrder: false) is not { } first)
            return null;
        return OfOrder(seconds, measured, step, isSecondOrder: true) is { } second && IsBetter(first, second, seconds.Count) ? second.Estimate : first.Estimate;
    }

    private static bool IsBetter((StepEstimate Estimate, double Squares, ResidualNoise Noise) first, (StepEstimate Estimate, double Squares, ResidualNoise Noise) second, int samples)
    {
        var left = second.Noise.Independent(samples) - 5;
        var fast = second.Estimate.Process.SecondTimeConstant;
        return left > 1 && fast.Value > 3 * fast.Standard && (first.Squares - second.Squares) * left > Keep * second.Squares;
    }

    private static (StepEstimate Estimate, double Squares, ResidualNoise Noise)? OfOrder(IReadOnlyList<double> seconds, IReadOnlyList<double> measured, double step, bool isSecondOrder)
    {
        if (StepFit.Of(seconds, measured, step, isSecondOrder) is not { } fit || (isSecondOrder && !(fit.Model.SecondTimeConstantSeconds > 1e-4 * fit.Model.TimeConstantSeconds)))
            return null;
        double[] left = [.. seconds.Select((time, at) => measured[at] - fit.Rest - (step * fit.Model.StepAt(time)))];
        double[][] slopes = [.. seconds.Select(time => Slopes(fit.Model, step, time, isSecondOrder))];
        if (LeastSquares.Fit(slopes, left) is not { } linear)
            return null;
        var noise = ResidualNoise.Of(left, slopes[0].Length);
        var covariance = Sandwich(linear.Cofactors, noise.Weigh(slopes));
        var size = slopes[0].Length - 1;
        var ofProcess = new double[size, size];
        for (var row = 0; row < size; row++)
            for (var column = 0; column < size; column++)
                ofProcess[row, column] = covariance[row + 1, column + 1];
        var process = new ProcessEstimate(fit.Model, ofProcess);
        return (new(process, new(fit.Rest, Math.Sqrt(covariance[0, 0])), fit.ResidualDeviation, noise.First, fit.SettledShare), left.Sum(value => value * value), noise);
    }

    // By rest, ln k, ln τ1, ln τ2, θ.
    private static double[] Slopes(ProcessModel model, double step, double time, bool isSecondOrder)
    {
        const double Small = 1e-4;
        double By(ProcessModel up, ProcessModel down, double width) => step * (up.StepAt(time) - down.StepAt(time)) / (2 * width);
        ProcessModel Slow(double by) => model with { TimeConstantSeconds = model.TimeConstantSeconds * Math.Exp(by) };
        ProcessModel Fast(double by) => model with { SecondTimeConstantSeconds = model.SecondTimeConstantSeconds * Math.Exp(by) };
        ProcessModel Dead(double by) => model with { DeadTimeSeconds = model.DeadTimeSeconds + by };
        var later = Small * model.TimeConstantSeconds;
        var (gain, slow, dead) = (step * model.StepAt(time), By(Slow(Small), Slow(-Small), Small), By(Dead(later), Dead(-later), later));
        return isSecondOrder ? [1, gain, slow, By(Fast(Small), Fast(-Small), Small), dead] : [1, gain, slow, dead];
    }

    private static double[,] Sandwich(double[,] bread, double[,] filling) => Product(Product(bread, filling), bread);

    private static double[,] Product(double[,] left, double[,] right)
    {
        var size = left.GetLength(0);
        var product = new double[size, size];
        for (var row = 0; row < size; row++)
            for (var column = 0; column < size; column++)
                for (var inner = 0; inner < size; inner++)
                    product[row, column] += left[row, inner] * right[inner, column];
        return product;
    }
}
