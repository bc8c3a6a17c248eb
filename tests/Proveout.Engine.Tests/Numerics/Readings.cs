using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

/// <summary>The readings between all nodes of a network.</summary>
internal static class Readings
{
    /// <summary>Readings of a network; infinite where nothing connects.</summary>
    public static double[,] Of(ResistorNetwork network)
    {
        var readings = new double[network.NodeCount, network.NodeCount];
        for (var a = 0; a < network.NodeCount; a++)
            for (var b = 0; b < network.NodeCount; b++)
                readings[a, b] = network.Resistance(a, b);
        return readings;
    }

    /// <summary>Readings of a network after a change, without building it anew.</summary>
    public static double[,] Of(ResistorNetwork network, List<EdgeChange> changes)
    {
        var pairs = (from a in Enumerable.Range(0, network.NodeCount) from b in Enumerable.Range(0, network.NodeCount) select (a, b)).ToArray();
        var changed = new ChangedPorts(new Ports(network, pairs));
        changed.Apply(changes);
        var readings = Of(network);
        for (var port = 0; port < pairs.Length; port++)
            if (changed.Alters(port, out var ohms))
                readings[pairs[port].a, pairs[port].b] = ohms;
        return readings;
    }

    /// <summary>True when two readings are the same to a relative tolerance, or both over range.</summary>
    public static bool AreSame(double one, double two, double tolerance) =>
        one.Equals(two) || Math.Abs(one - two) <= tolerance * Math.Min(Math.Abs(one), Math.Abs(two));

    /// <summary>True when every pair of readings passes.</summary>
    public static bool All(double[,] one, double[,] two, Func<double, double, bool> passes)
    {
        for (var a = 0; a < one.GetLength(0); a++)
            for (var b = 0; b < one.GetLength(1); b++)
                if (a != b && !passes(one[a, b], two[a, b]))
                    return false;
        return true;
    }
}
