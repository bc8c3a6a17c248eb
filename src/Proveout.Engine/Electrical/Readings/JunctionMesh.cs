using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The junctions of one state with every value at one limit, and the volts that a current through one puts across another with all of them open.</summary>
/// <remarks>
/// Islands are tied together through a gigohm each, which takes nanoamperes of the test current, and each junction has a milliohm in series, so
/// that two in parallel share: neither changes a reading by a digit. Safe for use from several threads once made.
/// </remarks>
internal sealed class JunctionMesh
{
    private const double TieOhms = 1e9;
    private const double SeriesOhms = 1e-3;

    private readonly ResistorNetwork _network;
    private readonly DoubleDouble[,] _mutual;

    /// <summary>Reduces a network to its junctions.</summary>
    public JunctionMesh(ResistorNetwork network, IReadOnlyList<(int Anode, int Cathode, double Volts)> junctions)
    {
        (_network, Junctions) = (network, junctions);
        _mutual = new DoubleDouble[junctions.Count, junctions.Count];
        for (var row = 0; row < junctions.Count; row++)
            for (var column = 0; column <= row; column++)
                _mutual[row, column] = _mutual[column, row] =
                    Mutual(junctions[row].Anode, junctions[row].Cathode, junctions[column].Anode, junctions[column].Cathode)
                    + (row == column ? SeriesOhms : 0);
    }

    /// <summary>Anode, cathode and forward voltage of each junction.</summary>
    public IReadOnlyList<(int Anode, int Cathode, double Volts)> Junctions { get; }

    /// <summary>Volts across one junction for one ampere through another, or through itself.</summary>
    public DoubleDouble this[int one, int other] => _mutual[one, other];

    /// <summary>Volts across c and d for one ampere driven from a to b.</summary>
    public DoubleDouble Mutual(int a, int b, int c, int d) => Potential(a, c) - Potential(a, d) - Potential(b, c) + Potential(b, d);

    private DoubleDouble Potential(int fed, int seen) =>
        _network.Islands.Of(fed) == _network.Islands.Of(seen) ? _network.Blocks.Transfer(fed, seen) + TieOhms : DoubleDouble.Zero;
}
