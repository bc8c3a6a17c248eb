using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The guards that the network at one limit has to offer. One thread's own.</summary>
internal sealed class GuardSide(PairLimit limit)
{
    private const int FewNodes = 60;

    // Guards of pairs and of single faults serve triples too, where two others are made.
    private const int OthersTogether = 2;

    private readonly GuardGraph _graph = new(limit);
    private readonly List<EdgeChange> _changes = [];
    private int[]? _faults;
    private EdgeChange[]? _controls;
    private readonly ChangedNetwork _network = new(limit.Network);
    private bool _isApplied;

    private CutGuard Cut => field ??= new CutGuard(_graph);

    private LayerGuard Layers => field ??= new LayerGuard(_graph);

    private FlowGuard Flow => field ??= new FlowGuard(_graph);

    private PathGuard Path => field ??= new PathGuard(_graph);

    private PotentialGuard Potentials => field ??= new PotentialGuard(limit, _network);

    /// <summary>Makes the changes of faults and controls in place of those before, unless they are those that are made.</summary>
    /// <param name="faults">The faults.</param>
    /// <param name="controls">What an operated control changes; one array for each.</param>
    public void Apply(int[] faults, EdgeChange[] controls)
    {
        if (_faults == faults && _controls == controls)
            return;
        (_faults, _controls) = (faults, controls);
        _graph.Apply(faults, controls);
        _isApplied = false;
        _changes.Clear();
        foreach (var fault in faults)
            _changes.AddRange(limit.ChangesOf(fault));
        _changes.AddRange(controls);
    }

    /// <summary>Adds the faults that may bring a reading above some ohms; false when no paths keep it below.</summary>
    public bool TryAddPath(CandidateCheck check, double mostOhms, List<int> faults)
    {
        if (Ohms(check) > mostOhms)
            return false;
        if (Path.TryFind(check.A, check.B, mostOhms))
            Path.AddRaising(faults, OthersTogether);
        else if (Flow.TryFind(check.A, check.B, mostOhms))
            Flow.AddRaising(faults, OthersTogether);
        else
            return false;
        return true;
    }

    /// <summary>Adds the faults that may bring the conductance between the leads above a value; false when neither cuts nor potentials keep it below.</summary>
    /// <remarks>The smaller the set the fewer faults touch it: first a small one round either lead. Potentials of all nodes take longest.</remarks>
    public bool TryAddCut(CandidateCheck check, double mostSiemens, bool thoroughly, List<int> faults)
    {
        if (mostSiemens < 0 || 1 / Ohms(check) > mostSiemens)
            return false;
        foreach (var mostNodes in new[] { FewNodes, int.MaxValue })
            if (Cut.TryFind(check.A, check.B, mostSiemens, mostNodes) || Cut.TryFind(check.B, check.A, mostSiemens, mostNodes))
            {
                Cut.AddCrossing(faults);
                return true;
            }

        if (Layers.TryFind(check.A, check.B, 1 / mostSiemens))
            Layers.AddCrossing(faults);
        else if (thoroughly && Potentials.TryFind(check.A, check.B, mostSiemens))
            Potentials.AddLowering(faults, OthersTogether);
        else
            return false;
        return true;
    }

    /// <summary>Adds the faults that may join something to the piece of one lead; false when the leads are on one piece or neither piece is enough.</summary>
    /// <param name="check">The leads.</param>
    /// <param name="isEnough">True when a piece, told by which nodes it holds, keeps the verdict whatever lies beyond it.</param>
    /// <param name="faults">The faults.</param>
    public bool TryAddOpen(CandidateCheck check, Func<Func<int, bool>, bool> isEnough, List<int> faults)
    {
        if (double.IsFinite(Ohms(check)))
            return false;
        foreach (var (from, to) in new[] { (check.A, check.B), (check.B, check.A) })
            if (Cut.TryFind(from, to, 0, int.MaxValue) && isEnough(Cut.Holds))
            {
                Cut.AddCrossing(faults);
                return true;
            }

        return false;
    }

    // Nothing is looked for that is not there.
    private double Ohms(CandidateCheck check)
    {
        if (!_isApplied)
            _network.Apply(_changes);
        _isApplied = true;
        return _network.Ohms(check.A, check.B);
    }
}
