namespace Proveout.Engine.Heat;

/// <summary>A process known from a log, with its uncertainty.</summary>
/// <param name="Model">The process.</param>
/// <param name="Covariance">Covariance of ln k, ln τ1, ln τ2 (left out for a first-order process) and θ, in that order.</param>
public sealed record ProcessEstimate(ProcessModel Model, double[,] Covariance)
{
    /// <summary>k with its uncertainty, in K for full output.</summary>
    public Estimate Gain => Of(model => model.Gain);

    /// <summary>τ1 with its uncertainty, in s.</summary>
    public Estimate TimeConstant => Of(model => model.TimeConstantSeconds);

    /// <summary>τ2 with its uncertainty, in s; zero for a first-order process.</summary>
    public Estimate SecondTimeConstant => Of(model => model.SecondTimeConstantSeconds);

    /// <summary>θ with its uncertainty, in s.</summary>
    public Estimate DeadTime => Of(model => model.DeadTimeSeconds);

    /// <summary>k/τ1 with its uncertainty, in K/s: how quickly it would heat up without any loss. Known well even when the log does not go on to the end.</summary>
    public Estimate Rate => Of(model => model.Gain / model.TimeConstantSeconds);

    /// <summary>Whether a second time constant was found.</summary>
    public bool IsSecondOrder => Model.SecondTimeConstantSeconds > 0;

    /// <summary>A figure that follows from the process, with its uncertainty (JCGM 100:2008, equation 13, by differences of one standard uncertainty).</summary>
    public Estimate Of(Func<ProcessModel, double> figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        var size = Covariance.GetLength(0);
        var slopes = new double[size];
        for (var index = 0; index < size; index++)
        {
            var step = Math.Max(1e-6, 0.1 * Math.Sqrt(Covariance[index, index]));
            slopes[index] = (figure(Moved(index, step)) - figure(Moved(index, -step))) / (2 * step);
        }

        var sum = 0.0;
        for (var row = 0; row < size; row++)
            for (var column = 0; column < size; column++)
                sum += slopes[row] * Covariance[row, column] * slopes[column];
        return new(figure(Model), Math.Sqrt(Math.Max(0, sum)));
    }

    /// <summary>The process itself and those at twice the standard uncertainty along each axis of the ellipsoid in which it lies.</summary>
    public IEnumerable<ProcessModel> Corners()
    {
        yield return Model;
        var size = Covariance.GetLength(0);
        var root = Root(Covariance);
        for (var column = 0; column < size; column++)
            foreach (var sign in (int[])[-2, 2])
                yield return Moved([.. Enumerable.Range(0, size).Select(row => sign * root[row, column])]);
    }

    private ProcessModel Moved(int index, double by)
    {
        var moves = new double[Covariance.GetLength(0)];
        moves[index] = by;
        return Moved(moves);
    }

    private ProcessModel Moved(double[] by)
    {
        var slow = Model.TimeConstantSeconds * Math.Exp(by[1]);
        var fast = IsSecondOrder ? Model.SecondTimeConstantSeconds * Math.Exp(by[2]) : 0;
        // Below zero a dead time is none.
        return new(Model.Gain * Math.Exp(by[0]), Math.Max(slow, fast), Math.Min(slow, fast), Math.Max(0, Model.DeadTimeSeconds + by[^1]));
    }

    // Cholesky's lower triangle; a column that the others determine is left empty.
    private static double[,] Root(double[,] matrix)
    {
        var size = matrix.GetLength(0);
        var root = new double[size, size];
        for (var column = 0; column < size; column++)
        {
            var rest = matrix[column, column];
            for (var inner = 0; inner < column; inner++)
                rest -= root[column, inner] * root[column, inner];
            if (!(rest > 1e-14 * matrix[column, column]))
                continue;
            root[column, column] = Math.Sqrt(rest);
            for (var row = column + 1; row < size; row++)
            {
                var sum = matrix[row, column];
                for (var inner = 0; inner < column; inner++)
                    sum -= root[row, inner] * root[column, inner];
                root[row, column] = sum / root[column, column];
            }
        }

        return root;
    }
}
