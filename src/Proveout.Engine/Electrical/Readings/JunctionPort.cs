using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>One port of a network of resistors and junctions, every value at one of its limits: what it drops when a current is driven through it.</summary>
/// <remarks>
/// The network of resistors, junctions open, is reduced to the ports of the probes and of the junctions; which junctions conduct is a linear
/// complementarity problem. The junctions that conducted last are tried first. One thread's own.
/// </remarks>
internal sealed class JunctionPort
{
    private readonly JunctionMesh _mesh;
    private readonly int[] _near;
    private readonly DoubleDouble[] _transfer;
    private readonly DoubleDouble _own;
    private readonly bool[] _conducting;

    /// <summary>A port of a network with some junctions.</summary>
    public JunctionPort(ResistorNetwork network, IReadOnlyList<(int Anode, int Cathode, double Volts)> junctions, int red, int black)
        : this(new JunctionMesh(network, junctions), [.. Enumerable.Range(0, junctions.Count)], red, black)
    {
    }

    /// <summary>A port of a mesh of junctions.</summary>
    /// <param name="mesh">All junctions.</param>
    /// <param name="near">Those that can conduct for this port.</param>
    /// <param name="red">Node of the red lead.</param>
    /// <param name="black">Node of the black lead.</param>
    public JunctionPort(JunctionMesh mesh, int[] near, int red, int black)
    {
        (_mesh, _near) = (mesh, near);
        _conducting = new bool[near.Length];
        _own = mesh.Mutual(red, black, red, black);
        _transfer = Array.ConvertAll(near, junction => mesh.Mutual(red, black, mesh.Junctions[junction].Anode, mesh.Junctions[junction].Cathode));
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
            vector[index] = (DoubleDouble)_mesh.Junctions[_near[index]].Volts - (_transfer[index] * amperes);
        if (ComplementarityProblem.Solve((row, column) => _mesh[_near[row], _near[column]], vector, _conducting) is not { } currents)
            return null;
        var volts = _own * amperes;
        var junctionWatts = DoubleDouble.Zero;
        for (var index = 0; index < currents.Length; index++)
            if (currents[index].High != 0)
            {
                volts -= _transfer[index] * currents[index];
                junctionWatts += currents[index] * _mesh.Junctions[_near[index]].Volts;
            }

        return ((double)volts, (double)((volts * amperes) + junctionWatts) / 2);
    }
}
