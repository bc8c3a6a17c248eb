using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The diode tests of one set-up, with the limits of their volts in the machine as designed.</summary>
internal sealed class DiodeTable : ICheckTable
{
    private readonly PortTable _ports;
    private readonly int _place;
    private readonly Dictionary<int, int[]> _waysThrough;
    private readonly Dictionary<int, int[]> _joinedTo;

    /// <summary>Makes the table of the candidates of one set-up, which follow each other from an index on.</summary>
    /// <param name="ports">The resistances of the set-up; the ports of these candidates follow those of its own.</param>
    /// <param name="place">Place of that table among all.</param>
    /// <param name="state">The network of the set-up, all controls at rest.</param>
    /// <param name="wiring">The wiring.</param>
    /// <param name="candidates">The candidates.</param>
    /// <param name="firstCheck">Index of the first of them among all checks.</param>
    public DiodeTable(PortTable ports, int place, StateNetwork state, WiringNetwork wiring, CandidateCheck[] candidates, int firstCheck)
    {
        (_ports, _place, Candidates, FirstCheck) = (ports, place, candidates, firstCheck);
        Paths = new PathVolts(wiring, state, Mode);
        Ways = Array.ConvertAll(candidates, candidate => Paths.Best(candidate.A, candidate.B));
        _waysThrough = Sorted(Ways.Index().SelectMany(way => way.Item.Elements.Select(element => (element, way.Index))));
        _joinedTo = Sorted(candidates.Index().Select(item => (Strays.RootOf(Low.IslandsOf(PortOf(item.Index)).OfA), item.Index)));
        Good =
        [
            .. candidates.Select((_, index) => DiodeBounds.Of(
                Mode, Low.Ohms(PortOf(index)), High.Ohms(PortOf(index)), ports.Strays, Low.IslandsOf(PortOf(index)), Ways[index].Volts)),
        ];
    }

    /// <summary>The meter.</summary>
    public static DiodeTestMode Mode => MeterMode.DiodeTest;

    /// <summary>The candidates.</summary>
    public CandidateCheck[] Candidates { get; }

    /// <summary>Index of the first of them among all checks.</summary>
    public int FirstCheck { get; }

    /// <summary>The ports with every resistance at its low limit.</summary>
    public Ports Low => _ports.Low.Ports;

    /// <summary>The ports with every resistance at its high limit.</summary>
    public Ports High => _ports.High.Ports;

    /// <summary>What of junctions and insulation touches each island of the low network.</summary>
    public StrayPieces Strays => _ports.Strays;

    /// <summary>Sets the bits of the candidates of whose best way a fault changes an element.</summary>
    public void AddOnWay(WiringFault fault, Span<ulong> mask)
    {
        for (var change = 0; change < fault.Changes.Count; change++)
            if (fault.Changes[change].ChangedElement is { } element && _waysThrough.TryGetValue(element, out var through))
                foreach (var index in through)
                    Set(mask, index);
    }

    /// <summary>Sets the bits of the candidates whose red lead junctions or insulation join to pieces that a fault parts or joins, where they then join otherwise.</summary>
    public void AddRegrouped(FaultyPorts faulty, Span<ulong> mask)
    {
        if (!faulty.MovesPieces || !faulty.ChangedStrays.IsRegrouped)
            return;
        foreach (var island in faulty.Low.Network.TouchedIslands)
            foreach (var index in _joinedTo.GetValueOrDefault(Strays.RootOf(island), []))
                Set(mask, index);
    }

    /// <summary>Sets the bit of a candidate.</summary>
    public static void Set(Span<ulong> mask, int index) => mask[index / 64] |= 1UL << (index % 64);

    /// <summary>Number of the port of a candidate.</summary>
    public int PortOf(int index) => _ports.Candidates.Length + index;

    /// <summary>Finds single ways from lead to lead.</summary>
    public PathVolts Paths { get; }

    /// <summary>The best single way of each port in the machine as designed.</summary>
    public VoltWay[] Ways { get; }

    /// <summary>Limits of the volts of each port in the machine as designed; infinite when over range.</summary>
    public (double LowVolts, double HighVolts)[] Good { get; }

    private static Dictionary<int, int[]> Sorted(IEnumerable<(int Place, int Index)> candidates) =>
        candidates.GroupBy(item => item.Place, item => item.Index).ToDictionary(group => group.Key, group => group.ToArray());

    /// <inheritdoc/>
    public ICheckWorker NewWorker(IReadOnlyList<ICheckWorker> before) => new DiodeWorker(this, (PortWorker)before[_place]);

    /// <inheritdoc/>
    public ICatchWorker NewCatchWorker(IReadOnlyList<ICatchWorker> before) => new DiodeCatchWorker(this, (PortCatchWorker)before[_place]);
}
