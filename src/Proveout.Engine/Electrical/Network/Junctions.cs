using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The junctions of a wiring network, and the least that they leave of a reading.</summary>
/// <remarks>
/// No node lies outside the range between the two leads, so no junction sees more than the port does. Either the port stays below the lowest
/// forward voltage of all, then none conducts and the reading is that of the network with junctions open; or it does not, then voltage over
/// test current is at least that voltage over the highest test current. The lower of the two bounds every reading from below, however many
/// junctions there are, and with all of them open it is bounded from above.
/// </remarks>
internal sealed class Junctions
{
    private readonly (int Anode, int Cathode, double ForwardVolts)[] _all;

    public Junctions(WiringNetwork wiring)
    {
        _all =
        [
            .. from element in wiring.Elements
               let volts = (element.Part as Diode)?.ForwardLow.Volts
               where volts < ElementBand.OpenCircuitVolts
               select (element.A, element.B, volts.Value),
        ];
        FloorOhms = _all.Length == 0 ? double.PositiveInfinity : _all.Min(junction => junction.ForwardVolts) / ElementBand.TestCurrentAmperes;
    }

    /// <summary>Anode, cathode and lowest forward voltage of each.</summary>
    public IReadOnlyList<(int Anode, int Cathode, double ForwardVolts)> All => _all;

    /// <summary>Least resistance that a conducting junction can show, in ohms.</summary>
    public double FloorOhms { get; }

    /// <summary>The lower limit of a reading, given that with all junctions open.</summary>
    public double Floor(double lowOhmsWithoutJunctions, int a, int b, JunctionGroups groups) =>
        lowOhmsWithoutJunctions > FloorOhms && groups.AreTogether(a, b) && HasJunction(groups, a) ? FloorOhms : lowOhmsWithoutJunctions;

    /// <summary>Groups the pieces of a network by the junctions between and inside them.</summary>
    /// <param name="pieceCount">Number of pieces; <paramref name="pieceOf"/> stays below it.</param>
    /// <param name="pieceOf">The piece that a node is in.</param>
    public JunctionGroups Groups(int pieceCount, Func<int, int> pieceOf)
    {
        var rootOf = new int[pieceCount];
        for (var piece = 0; piece < pieceCount; piece++)
            rootOf[piece] = piece;
        foreach (var (anode, cathode, _) in _all)
            rootOf[Root(rootOf, pieceOf(anode))] = Root(rootOf, pieceOf(cathode));
        for (var piece = 0; piece < pieceCount; piece++)
            rootOf[piece] = Root(rootOf, piece);
        return new JunctionGroups(pieceOf, rootOf);
    }

    private bool HasJunction(JunctionGroups groups, int node)
    {
        var group = groups.Of(node);
        foreach (var (anode, _, _) in _all)
            if (groups.Of(anode) == group)
                return true;
        return false;
    }

    private static int Root(int[] rootOf, int piece)
    {
        while (rootOf[piece] != piece)
            piece = rootOf[piece] = rootOf[rootOf[piece]];
        return piece;
    }
}
