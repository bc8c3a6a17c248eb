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
    private bool _hasPotentials;

    private CutGuard Cut => field ??= new CutGuard(_graph);

    private LayerGuard Layers => field ??= new LayerGuard(_graph);

    private FlowGuard Flow => field ??= new FlowGuard(_graph);

    private PathGuard Path => field ??= new PathGuard(_graph);

    private PotentialGuard Potentials => field ??= new PotentialGuard(limit);

    /// <summary>Makes the changes of faults and controls in place of those before.</summary>
    public void Apply(ReadOnlySpan<int> faults, EdgeChange[] controls)
    {
        _graph.Apply(faults, controls);
        _hasPotentials = false;
        _changes.Clear();
        foreach (var fault in faults)
            _changes.AddRange(limit.ChangesOf(fault));
        _changes.AddRange(controls);
    }

    /// <summary>Adds the faults that may bring a reading above some ohms; false when no paths keep it below.</summary>
    public bool TryAddPath(CandidateCheck check, double mostOhms, List<int> faults)
    {
        if (Path.TryFind(check.A, check.B, mostOhms))
            Path.AddRaising(faults, OthersTogether);
        else if (Flow.TryFind(check.A, check.B, mostOhms))
            Flow.AddRaising(faults, OthersTogether);
        else
            return false;
        return true;
    }

    /// <summary>Adds the faults that may bring the conductance between the leads above a value; false when no cuts keep it below.</summary>
    /// <remarks>The smaller the set the fewer faults touch it: first a small one round either lead.</remarks>
    public bool TryAddCut(CandidateCheck check, double mostSiemens, List<int> faults)
    {
        if (mostSiemens < 0)
            return false;
        foreach (var mostNodes in new[] { FewNodes, int.MaxValue })
            if (Cut.TryFind(check.A, check.B, mostSiemens, mostNodes) || Cut.TryFind(check.B, check.A, mostSiemens, mostNodes))
            {
                Cut.AddCrossing(faults);
                return true;
            }

        if (!Layers.TryFind(check.A, check.B, 1 / mostSiemens))
            return TryAddByPotentials(check, mostSiemens, faults);
        Layers.AddCrossing(faults);
        return true;
    }

    private bool TryAddByPotentials(CandidateCheck check, double mostSiemens, List<int> faults)
    {
        if (!_hasPotentials)
            Potentials.Apply(_changes);
        _hasPotentials = true;
        if (!Potentials.TryFind(check.A, check.B, mostSiemens))
            return false;
        Potentials.AddLowering(faults, OthersTogether);
        return true;
    }

    /// <summary>Adds the faults that may join something to the piece of one lead; false when the leads are on one piece or neither piece is enough.</summary>
    /// <param name="check">The leads.</param>
    /// <param name="isEnough">True when a piece, told by which nodes it holds, keeps the verdict whatever lies beyond it.</param>
    /// <param name="faults">The faults.</param>
    public bool TryAddOpen(CandidateCheck check, Func<Func<int, bool>, bool> isEnough, List<int> faults)
    {
        foreach (var (from, to) in new[] { (check.A, check.B), (check.B, check.A) })
            if (Cut.TryFind(from, to, 0, int.MaxValue) && isEnough(Cut.Holds))
            {
                Cut.AddCrossing(faults);
                return true;
            }

        return false;
    }
}
