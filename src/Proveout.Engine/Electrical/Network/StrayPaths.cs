using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>What may carry current beside the resistances of a wiring network: junctions and imperfect insulation.</summary>
/// <remarks>
/// Junctions: no node lies outside the range between the two leads, so no junction sees more than the port does. Either the port stays below
/// the lowest forward voltage of those that touch its piece of the network, then none of them conducts and those beyond get no current; or it
/// does not, then voltage over test current is at least that voltage over the highest test current.
/// Insulation: each path through it takes at most its conductance times the port's voltage, so the conductance of a port rises by at most the
/// sum of those that touch its piece of the network (Dirichlet's principle; Doyle and Snell, Random Walks and Electric Networks, 1.3.5).
/// From above a reading is bounded by the network with all of these open.
/// </remarks>
internal sealed class StrayPaths
{
    public StrayPaths(WiringNetwork wiring)
    {
        Junctions =
        [
            .. from element in wiring.Elements
               let volts = (element.Part as Diode)?.ForwardLow.Volts
               where volts < ElementBand.OpenCircuitVolts
               select (element.A, element.B, volts.Value),
        ];
        Insulation =
        [
            .. from element in wiring.Elements
               let ohms = (element.Part as Insulation)?.AtLeast.Ohms
               where ohms is not null
               select (element.A, element.B, 1 / ohms.Value),
        ];
    }

    /// <summary>Anode, cathode and lowest forward voltage in volts of each junction.</summary>
    public (int Anode, int Cathode, double ForwardVolts)[] Junctions { get; }

    /// <summary>Both nodes and highest conductance in siemens of each insulation.</summary>
    public (int A, int B, double Siemens)[] Insulation { get; }

    /// <summary>Sums up what touches each island of a network.</summary>
    /// <param name="islands">The islands.</param>
    /// <param name="ways">Least sum of forward voltages on the ways from one island to another that pass a junction.</param>
    public StrayPieces Of(Islands islands, Func<int, int, double> ways)
    {
        var pieceOf = islands.OfNodes;
        var leakage = new DoubleDouble[islands.Count];
        var leastVolts = new double[islands.Count];
        Array.Fill(leastVolts, double.PositiveInfinity);
        var joined = new DisjointSets();
        joined.Reset(islands.Count);
        foreach (var (a, b, siemens) in Insulation)
        {
            leakage[pieceOf[a]] += siemens;
            if (pieceOf[b] != pieceOf[a])
                leakage[pieceOf[b]] += siemens;
            joined.Join(pieceOf[a], pieceOf[b]);
        }

        foreach (var (anode, cathode, forward) in Junctions)
        {
            leastVolts[pieceOf[anode]] = Math.Min(leastVolts[pieceOf[anode]], forward);
            leastVolts[pieceOf[cathode]] = Math.Min(leastVolts[pieceOf[cathode]], forward);
            joined.Join(pieceOf[anode], pieceOf[cathode]);
        }

        return new StrayPieces(Array.ConvertAll(leakage, sum => (double)sum), [.. Enumerable.Range(0, islands.Count).Select(joined.RootOf)], leastVolts, ways);
    }
}
