using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>One port of a network of resistors and junctions, every value at one of its limits: what it drops when a current is driven through it.</summary>
/// <remarks>
/// The network of resistors, junctions open, is reduced to the ports of the probes and of the junctions; which junctions conduct is a linear
/// complementarity problem. Islands are tied together through a gigohm each, which takes nanoamperes of the test current, and each junction
/// has a milliohm in series, so that two in parallel share: neither changes a reading by a digit. The junctions that conducted last are tried
/// first. One thread's own.
/// </remarks>
internal sealed class JunctionPort
{
    private const double TieOhms = 1e9;
    private const double SeriesOhms = 1e-3;

    private readonly ResistorNetwork _network;
    private readonly DoubleDouble[,] _mutual;
    private readonly DoubleDouble[] _transfer;
    private readonly DoubleDouble _own;
    private readonly double[] _forwardVolts;
    private readonly bool[] _conducting;

    public JunctionPort(ResistorNetwork network, IReadOnlyList<(int Anode, int Cathode, double Volts)> junctions, int red, int black)
    {
        _network = network;
        _forwardVolts = [.. junctions.Select(junction => junction.Volts)];
        _conducting = new bool[junctions.Count];
        _own = Mutual(red, black, red, black);
        _transfer = [.. junctions.Select(junction => Mutual(red, black, junction.Anode, junction.Cathode))];
        _mutual = new DoubleDouble[junctions.Count, junctions.Count];
        for (var row = 0; row < junctions.Count; row++)
            for (var column = 0; column <= row; column++)
                _mutual[row, column] = _mutual[column, row] =
                    Mutual(junctions[row].Anode, junctions[row].Cathode, junctions[column].Anode, junctions[column].Cathode)
                    + (row == column ? SeriesOhms : 0);
    }

    /// <summary>Resistance of the port in ohms with every junction open, ties included.</summary>
    public double OpenOhms => (double)_own;

    /// <summary>Drives a current through the port.</summary>
    /// <param name="amperes">The current, above zero.</param>
    /// <returns>
    /// The volts, and the content (the integral of volts over current up to this current, in watts; Millar, Philosophical Magazine 42 (1951)
    /// 1150-1160); null when the problem was not solved.
    /// </returns>
    public (double Volts, double Content)? Drive(double amperes)
    {
        var vector = new DoubleDouble[_transfer.Length];
        for (var index = 0; index < vector.Length; index++)
            vector[index] = (DoubleDouble)_forwardVolts[index] - (_transfer[index] * amperes);
        if (ComplementarityProblem.Solve(_mutual, vector, _conducting) is not { } currents)
            return null;
        var volts = _own * amperes;
        var junctionWatts = DoubleDouble.Zero;
        for (var index = 0; index < currents.Length; index++)
        {
            volts -= _transfer[index] * currents[index];
            junctionWatts += currents[index] * _forwardVolts[index];
        }

        return ((double)volts, (double)((volts * amperes) + junctionWatts) / 2);
    }

    // Volts across c and d for one ampere driven from a to b.
    private DoubleDouble Mutual(int a, int b, int c, int d) => Potential(a, c) - Potential(a, d) - Potential(b, c) + Potential(b, d);

    private DoubleDouble Potential(int fed, int seen) =>
        _network.Islands.Of(fed) == _network.Islands.Of(seen) ? _network.Transfer(fed, seen) + TieOhms : DoubleDouble.Zero;
}
