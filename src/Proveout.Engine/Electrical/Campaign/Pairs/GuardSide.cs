using System.Runtime.InteropServices;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The guards that the network at one limit has to offer. One thread's own.</summary>
internal sealed class GuardSide(PairLimit limit, IReadOnlyList<WiringFault> faults)
{
    private const int FewNodes = 60;
    private const double AnyOhms = 1e15;

    // Guards of pairs and of single faults serve triples too, where two others are made.
    private const int OthersTogether = 2;

    private readonly GuardGraph _graph = new(limit);
    private readonly PairLimitWorker _worker = new(limit, faults);
    private int[]? _together;
    private LimitPorts? _ports;

    private CutGuard Cut => field ??= new CutGuard(_graph);

    private LayerGuard Layers => field ??= new LayerGuard(_graph);

    private FlowGuard Flow => field ??= new FlowGuard(_graph);

    private PathGuard Path => field ??= new PathGuard(_graph);

    private PotentialGuard Potentials => field ??= new PotentialGuard(limit, Network);

    /// <summary>The network with the faults in it.</summary>
    public ChangedNetwork Network => _worker.Network;

    /// <summary>Takes faults in place of those before, unless they are those that are taken.</summary>
    /// <param name="together">The faults; one array for each choice of faults.</param>
    /// <param name="ports">Knows what the operated control of the set-up changes; null when none is operated.</param>
    public void Take(int[] together, LimitPorts? ports)
    {
        if (_together == together && _ports == ports)
            return;
        (_together, _ports) = (together, ports);
        _worker.Take(together, ports);
        _graph.Apply(CollectionsMarshal.AsSpan(_worker.Changes));
    }

    /// <summary>Adds the faults that may bring a reading above some ohms; false when no paths keep it below.</summary>
    public bool TryAddPath(CandidateCheck check, double mostOhms, List<int> overturning)
    {
        if (Ohms(check) > mostOhms)
            return false;
        if (Path.TryFind(check.A, check.B, mostOhms))
            Path.AddRaising(overturning, OthersTogether);
        else if (Flow.TryFind(check.A, check.B, mostOhms))
            Flow.AddRaising(overturning, OthersTogether);
        else
            return false;
        return true;
    }

    /// <summary>Adds the faults that may part two nodes that hang together.</summary>
    public bool TryAddWay(int one, int other, List<int> overturning)
    {
        if (!Path.TryFind(one, other, AnyOhms))
            return false;
        Path.AddRaising(overturning, OthersTogether);
        return true;
    }

    /// <summary>Adds the faults that may bring the conductance between the leads above a value; false when neither cuts nor potentials keep it below.</summary>
    /// <remarks>The smaller the set the fewer faults touch it: first a small one round either lead. Potentials of all nodes take longest.</remarks>
    public bool TryAddCut(CandidateCheck check, double mostSiemens, bool thoroughly, List<int> overturning)
    {
        if (mostSiemens < 0 || 1 / Ohms(check) > mostSiemens)
            return false;
        foreach (var mostNodes in new[] { FewNodes, int.MaxValue })
            if (Cut.TryFind(check.A, check.B, mostSiemens, mostNodes) || Cut.TryFind(check.B, check.A, mostSiemens, mostNodes))
            {
                Cut.AddCrossing(overturning);
                return true;
            }

        if (Layers.TryFind(check.A, check.B, 1 / mostSiemens))
            Layers.AddCrossing(overturning);
        else if (thoroughly && Potentials.TryFind(check.A, check.B, mostSiemens))
            Potentials.AddLowering(overturning, OthersTogether);
        else
            return false;
        return true;
    }

    /// <summary>Adds the faults that may join something to a piece of the network.</summary>
    public void AddJoining(int piece, List<int> joining)
    {
        for (var fault = 0; fault < limit.FaultCount; fault++)
            foreach (var change in limit.ChangesOf(fault))
                if (change.DeltaConductance.High > 0 && Network.PieceOf(change.A) == piece != (Network.PieceOf(change.B) == piece))
                    joining.Add(fault);
    }

    /// <summary>Adds the faults that may join something to the piece of one lead; false when the leads are on one piece or neither piece is enough.</summary>
    /// <param name="check">The leads.</param>
    /// <param name="isEnough">True when a piece, told by which nodes it holds, keeps the verdict whatever lies beyond it.</param>
    /// <param name="overturning">The faults.</param>
    public bool TryAddOpen(CandidateCheck check, Func<Func<int, bool>, bool> isEnough, List<int> overturning)
    {
        if (double.IsFinite(Ohms(check)))
            return false;
        foreach (var (from, to) in new[] { (check.A, check.B), (check.B, check.A) })
            if (Cut.TryFind(from, to, 0, int.MaxValue) && isEnough(Cut.Holds))
            {
                Cut.AddCrossing(overturning);
                return true;
            }

        return false;
    }

    // Nothing is looked for that is not there.
    private double Ohms(CandidateCheck check) => Network.Ohms(check.A, check.B);
}
