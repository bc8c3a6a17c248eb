using MathNet.Numerics.LinearAlgebra;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Volts of a port of resistors and ideal junctions by trying every pattern of conducting and blocking: the one that contradicts nothing is the solution.</summary>
internal static class ConductionStates
{
    private const double LeakSiemens = 1e-12;
    private const double RoundingVolts = 1e-6;

    /// <summary>Volts from red to black; null when no pattern fits.</summary>
    public static double? Volts(
        int nodes, (int A, int B, double Ohms)[] resistors, (int Anode, int Cathode, double Volts)[] junctions, int red, int black, double amperes)
    {
        for (var pattern = 0; pattern < 1 << junctions.Length; pattern++)
        {
            int[] on = [.. Enumerable.Range(0, junctions.Length).Where(index => (pattern >> index & 1) == 1)];
            var (matrix, right) = Equations(nodes, resistors, junctions, on);
            (right[red], right[black]) = (amperes, -amperes);
            var solution = matrix.LU().Solve(right);
            if (solution.ForAll(double.IsFinite) && Fits(solution, nodes, junctions, on))
                return solution[red] - solution[black];
        }

        return null;
    }

    private static (Matrix<double> Matrix, Vector<double> Right) Equations(
        int nodes, (int A, int B, double Ohms)[] resistors, (int Anode, int Cathode, double Volts)[] junctions, int[] on)
    {
        var matrix = Matrix<double>.Build.DenseDiagonal(nodes + on.Length, nodes + on.Length, row => row < nodes ? LeakSiemens : 0);
        var right = Vector<double>.Build.Dense(nodes + on.Length);
        foreach (var (a, b, ohms) in resistors)
        {
            matrix[a, a] += 1 / ohms;
            matrix[b, b] += 1 / ohms;
            matrix[a, b] -= 1 / ohms;
            matrix[b, a] -= 1 / ohms;
        }

        for (var index = 0; index < on.Length; index++)
        {
            var (anode, cathode, volts) = junctions[on[index]];
            matrix[anode, nodes + index] = matrix[nodes + index, anode] = 1;
            matrix[cathode, nodes + index] = matrix[nodes + index, cathode] = -1;
            right[nodes + index] = volts;
        }

        return (matrix, right);
    }

    private static bool Fits(Vector<double> solution, int nodes, (int Anode, int Cathode, double Volts)[] junctions, int[] on) =>
        Enumerable.Range(0, on.Length).All(index => solution[nodes + index] >= -1e-12)
        && junctions.Index().All(item => on.Contains(item.Index) || solution[item.Item.Anode] - solution[item.Item.Cathode] <= item.Item.Volts + RoundingVolts);
}
