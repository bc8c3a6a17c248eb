using Proveout.Engine.Machine;

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
        Nodes = [.. Insulation.SelectMany(item => new[] { item.A, item.B }).Concat(Junctions.SelectMany(item => new[] { item.Anode, item.Cathode })).Distinct()];
    }

    /// <summary>Anode, cathode and lowest forward voltage in volts of each junction.</summary>
    public (int Anode, int Cathode, double ForwardVolts)[] Junctions { get; }

    /// <summary>Both nodes and highest conductance in siemens of each insulation.</summary>
    public (int A, int B, double Siemens)[] Insulation { get; }

    /// <summary>The nodes that they end at, each once.</summary>
    public int[] Nodes { get; }

    /// <summary>Sums up what touches each piece of a network.</summary>
    /// <param name="pieceCount">Number of pieces; <paramref name="pieceOf"/> stays below it.</param>
    /// <param name="pieceOf">The piece that each node is in; only those of <see cref="Nodes"/> count.</param>
    /// <param name="room">Room of the calling thread, which the next call with it overwrites; null to take new room.</param>
    public StrayPieces Of(int pieceCount, ReadOnlySpan<int> pieceOf, StrayRoom? room = null)
    {
        var (leakage, rootOf, leastVolts) = (room ?? new()).Take(pieceCount);
        foreach (var (a, b, siemens) in Insulation)
        {
            leakage[pieceOf[a]] += siemens;
            if (pieceOf[b] != pieceOf[a])
                leakage[pieceOf[b]] += siemens;
        }

        foreach (var (anode, cathode, forward) in Junctions)
        {
            rootOf[Root(rootOf, pieceOf[anode])] = Root(rootOf, pieceOf[cathode]);
            leastVolts[pieceOf[anode]] = Math.Min(leastVolts[pieceOf[anode]], forward);
            leastVolts[pieceOf[cathode]] = Math.Min(leastVolts[pieceOf[cathode]], forward);
        }

        foreach (var (a, b, _) in Insulation)
            rootOf[Root(rootOf, pieceOf[a])] = Root(rootOf, pieceOf[b]);
        for (var piece = 0; piece < pieceCount; piece++)
            rootOf[piece] = Root(rootOf, piece);
        var pieces = new int[Nodes.Length];
        for (var place = 0; place < pieces.Length; place++)
            pieces[place] = pieceOf[Nodes[place]];
        return new StrayPieces(leakage, rootOf, leastVolts, new Lazy<JunctionWays>(() => new JunctionWays(this, pieces)));
    }

    private static int Root(int[] rootOf, int piece)
    {
        while (rootOf[piece] != piece)
            piece = rootOf[piece] = rootOf[rootOf[piece]];
        return piece;
    }
}
