namespace Proveout.Engine.Numerics;

/// <summary>
/// Resistances and potentials in a network whose sections are joined as a forest, before the updates that close loops. Reused from change to change by one thread.
/// </summary>
/// <remarks>
/// A current from one node to another takes the one way along the forest: in each section it enters at one node and leaves at another, which sets up the potentials that it would
/// set up in the network before the change; in sections beside the way the potential is the same everywhere. So nothing is subtracted that nearly cancels.
/// </remarks>
internal sealed class SectionFlows(ChangedPieces pieces, ResistorNetwork network)
{
    // A power of two. There are hundreds of these for a large machine: room for every node would be a gigabyte.
    private const int KeptOhms = 1024;

    private Stretch[] _stretches = [];
    private Section[] _sections = [];
    private int[] _order = [];
    private Stretch[] _ofPort = [];
    private int _count;

    // Ohms from nodes to the gates that they were asked for last, by the last bits of a node's number; both numbers with one added. Many ports of a section ask for the same.
    private (int From, int To, DoubleDouble Ohms)[] _toGate = [];

    /// <summary>Takes the sections, joints and updates of the pieces as they are now.</summary>
    public void Take()
    {
        _count = pieces.Sections.Count;
        if (_sections.Length < _count)
            (_sections, _order) = (new Section[2 * _count], new int[2 * _count]);
        FindTrees();
        if (_stretches.Length < _count * pieces.Updates.Length)
            _stretches = new Stretch[2 * _count * pieces.Updates.Length];
        for (var update = 0; update < pieces.Updates.Length; update++)
            Send(pieces.Updates[update].A, pieces.Updates[update].B, _stretches.AsSpan(update * _count, _count));
    }

    /// <summary>Where the current of an update enters and leaves a section: below zero when it does not pass it.</summary>
    public (int Entry, int Exit) EndsIn(int update, int section) => (StretchOf(update, section).Entry, StretchOf(update, section).Exit);

    /// <summary>Amperes that run through a joint from its node on one side.</summary>
    /// <param name="node">That node.</param>
    /// <param name="update">The update whose ampere runs.</param>
    /// <param name="joint">Index of the joint.</param>
    public double AmperesFrom(int node, int update, int joint)
    {
        var (ofA, ofB) = (pieces.Joints[joint].SectionOfA, pieces.Joints[joint].SectionOfB);
        var below = _sections[ofA].Joint == joint ? ofA : ofB;
        var up = StretchOf(update, below).AmperesUp;
        return _sections[below].Gate == node ? up : -up;
    }

    /// <summary>Potential of a node in volts, to a constant of its tree, while one ampere enters at the one end of an update and leaves at the other.</summary>
    public DoubleDouble At(int update, int node) => At(update, node, pieces.SectionOf(node));

    /// <summary>The same of a node whose section is known.</summary>
    public DoubleDouble At(int update, int node, int section) => At(StretchOf(update, section), node);

    /// <summary>Sends a current of one ampere from one node to another of the same tree, for <see cref="AtPort"/>.</summary>
    public void TakePort(int from, int to)
    {
        if (_ofPort.Length < _count)
            _ofPort = new Stretch[2 * _count];
        Send(from, to, _ofPort.AsSpan(0, _count));
    }

    /// <summary>Potential of a node in volts, to a constant of its tree, while the current of the port runs.</summary>
    public DoubleDouble AtPort(int node) => At(_ofPort[pieces.SectionOf(node)], node);

    /// <summary>Volts that one update sets up between the ends of another.</summary>
    public DoubleDouble Between(int update, NetworkUpdate other) => At(update, other.A) - At(update, other.B);

    /// <summary>Resistance in ohms between two nodes of one tree.</summary>
    /// <param name="a">The one node.</param>
    /// <param name="one">Its section.</param>
    /// <param name="b">The other node.</param>
    /// <param name="other">Its section.</param>
    public DoubleDouble Ohms(int a, int one, int b, int other)
    {
        var start = a;
        if (one == other)
            return network.Blocks.Between(a, b);
        var ohms = DoubleDouble.Zero;
        while (one != other)
            if (_sections[one].Depth >= _sections[other].Depth)
            {
                ohms += ToGate(_sections[one].Gate, a) + _sections[one].Ohms;
                (a, one) = (_sections[one].GateAbove, _sections[one].Above);
            }
            else
            {
                ohms += ToGate(_sections[other].Gate, b) + _sections[other].Ohms;
                (b, other) = (_sections[other].GateAbove, _sections[other].Above);
            }

        return ohms + (a == start ? ToGate(b, a) : ToGate(a, b));
    }

    private DoubleDouble ToGate(int gate, int node)
    {
        if (_toGate.Length == 0)
            _toGate = new (int, int, DoubleDouble)[KeptOhms];
        ref var found = ref _toGate[node & (KeptOhms - 1)];
        if (found.From != node + 1 || found.To != gate + 1)
            found = (node + 1, gate + 1, gate == node ? DoubleDouble.Zero : network.Blocks.Between(gate, node));
        return found.Ohms;
    }

    private ref Stretch StretchOf(int update, int section) => ref _stretches[(update * _count) + section];

    private DoubleDouble At(in Stretch stretch, int node) => stretch.Entry == stretch.Exit ? stretch.Level : stretch.Level + network.Blocks.Volts(stretch.Flow, node);

    // Each tree from its first section down, breadth first, so that a section comes after the one above it.
    private void FindTrees()
    {
        for (var section = 0; section < _count; section++)
            _sections[section] = new Section(-1, -1, -1, DoubleDouble.Zero, -1, -1);
        var end = 0;
        for (var section = 0; section < _count; section++)
        {
            if (_sections[section].Depth >= 0)
                continue;
            _sections[section] = _sections[section] with { Depth = 0 };
            _order[end++] = section;
            for (var next = end - 1; next < end; next++)
                for (var joint = 0; joint < pieces.Joints.Length; joint++)
                {
                    var (a, b, ofA, ofB, ohms, _) = pieces.Joints[joint];
                    Hang(ofB, new Section(ofA, b, a, ohms, joint, -1), _order[next], ref end);
                    Hang(ofA, new Section(ofB, a, b, ohms, joint, -1), _order[next], ref end);
                }
        }
    }

    private void Hang(int below, Section section, int from, ref int end)
    {
        if (section.Above != from || _sections[below].Depth >= 0)
            return;
        _sections[below] = section with { Depth = _sections[from].Depth + 1 };
        _order[end++] = below;
    }

    private void Send(int from, int to, Span<Stretch> stretches)
    {
        stretches.Fill(new Stretch { Entry = -1, Exit = -1 });
        FindEnds(from, to, stretches);
        for (var place = 0; place < _count; place++)
        {
            ref var stretch = ref stretches[_order[place]];
            if (stretch.Entry != stretch.Exit)
                stretch.Flow = network.Blocks.Flow(stretch.Entry, stretch.Exit);
            if (_sections[_order[place]] is { Above: >= 0 } section)
                stretch.Level = At(stretches[section.Above], section.GateAbove) + (section.Ohms * stretch.AmperesUp) - At(stretch, section.Gate);
        }
    }

    private void FindEnds(int from, int to, Span<Stretch> stretches)
    {
        var (one, other) = (pieces.SectionOf(from), pieces.SectionOf(to));
        stretches[one].Entry = from;
        stretches[other].Exit = to;
        while (one != other)
            if (_sections[one].Depth >= _sections[other].Depth)
            {
                (stretches[one].Exit, stretches[one].AmperesUp) = (_sections[one].Gate, 1);
                stretches[_sections[one].Above].Entry = _sections[one].GateAbove;
                one = _sections[one].Above;
            }
            else
            {
                (stretches[other].Entry, stretches[other].AmperesUp) = (_sections[other].Gate, -1);
                stretches[_sections[other].Above].Exit = _sections[other].GateAbove;
                other = _sections[other].Above;
            }
    }

    // The section above in its tree, the joint to it with the nodes where it ends, and how many are above.
    private readonly record struct Section(int Above, int Gate, int GateAbove, DoubleDouble Ohms, int Joint, int Depth);

    // Where the current of an update enters and leaves a section, how much of it runs to the section above, and what is added to its volts.
    private struct Stretch
    {
        public int Entry;
        public int Exit;
        public double AmperesUp;
        public DoubleDouble Level;
        public BlockFlow Flow;
    }
}
