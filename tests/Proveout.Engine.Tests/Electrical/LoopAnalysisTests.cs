using MathNet.Numerics.LinearAlgebra;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>The yardstick itself: loop currents against textbook networks and against the pseudo-inverse of the nodal matrix.</summary>
public sealed class LoopAnalysisTests
{
    [Fact]
    public void A_balanced_Wheatstone_bridge_reads_as_if_the_detector_were_not_there()
    {
        // Wheatstone, Philosophical Transactions 133 (1843) 303-327; any circuits textbook.
        var loops = new LoopAnalysis(4, [new(0, 1, 100), new(1, 3, 200), new(0, 2, 300), new(2, 3, 600), new(1, 2, 42)]);
        Assert.Equal(300.0 * 900 / 1200, loops.Reading(0, 3), 1e-12);
    }

    [Fact]
    public void A_cube_of_equal_resistors_reads_five_sixths_from_corner_to_corner()
    {
        // Classic puzzle; Doyle and Snell, Random Walks and Electric Networks, exercise 1.2.
        var edges = from corner in Enumerable.Range(0, 8) from bit in new[] { 1, 2, 4 } where (corner & bit) == 0 select new Resistor(corner, corner | bit, 1);
        Assert.Equal(5.0 / 6, new LoopAnalysis(8, [.. edges]).Reading(0, 7), 1e-12);
    }

    [Fact]
    public void Random_networks_read_as_the_pseudo_inverse_of_the_nodal_matrix_says()
    {
        var random = new Random(3);
        for (var round = 0; round < 100; round++)
        {
            var resistors = Enumerable.Range(0, 20)
                .Select(_ => new Resistor(random.Next(12), random.Next(12), Math.Pow(10, random.NextDouble() * 4)))
                .Where(resistor => resistor.A != resistor.B)
                .ToArray();
            var loops = new LoopAnalysis(12, resistors);
            for (var node = 1; node < 12; node++)
                if (double.IsFinite(loops.Reading(0, node)))
                    Assert.Equal(1, loops.Reading(0, node) / PseudoInverseReading(resistors, 0, node), 1e-7);
        }
    }

    // Klein and Randic, Journal of Mathematical Chemistry 12 (1993) 81-95.
    private static double PseudoInverseReading(Resistor[] resistors, int a, int b)
    {
        var laplacian = Matrix<double>.Build.Dense(12, 12);
        foreach (var (one, two, ohms) in resistors)
        {
            laplacian[one, one] += 1 / ohms;
            laplacian[two, two] += 1 / ohms;
            laplacian[one, two] -= 1 / ohms;
            laplacian[two, one] -= 1 / ohms;
        }

        var inverse = laplacian.PseudoInverse();
        return inverse[a, a] + inverse[b, b] - inverse[a, b] - inverse[b, a];
    }
}
