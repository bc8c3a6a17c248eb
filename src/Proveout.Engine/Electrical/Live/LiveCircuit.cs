using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The machine and the mains before it as one circuit of branches, for direct and for alternating current.</summary>
internal sealed class LiveCircuit
{
    /// <summary>Conductance from every node to earth: a gigohm, as good insulation and air leave it. It gives floating metal a potential.</summary>
    public const double LeakSiemens = 1e-9;

    private readonly HashSet<int> _residual;

    public LiveCircuit(
        WiringContext context,
        MainsSource? mains,
        int nodeCount,
        LiveBranch[] branches,
        LiveControl[] controls,
        LiveDrive[] drives,
        LiveResidualTrip[] residualTrips,
        IReadOnlyDictionary<(string Part, string Command), int> commands)
    {
        (Context, Mains, NodeCount, Branches) = (context, mains, nodeCount, branches);
        (Controls, Drives, ResidualTrips, Commands) = (controls, drives, residualTrips, commands);
        Siemens = [.. branches.Select(branch => branch.Siemens)];
        Moves = [.. branches.Select(branch => branch.Kind is LiveBranchKind.Contact or LiveBranchKind.Switch)];
        Paths = [.. branches.Where(branch => branch.Kind == LiveBranchKind.Path || Moves[branch.Index]).Select(branch => branch.Index)];
        _residual = [.. residualTrips.SelectMany(trip => trip.Branches)];
        MovingPaths = [.. Paths.Where(path => Moves[path] || branches[path].RatedAmperes is not null || _residual.Contains(path))];
        MainsSources = [.. branches.Where(branch => branch.Kind == LiveBranchKind.Mains).Select(branch => branch.Index)];
        Protective = [.. branches.Where(branch => branch.RatedAmperes is not null)];
        Supplies = [.. branches.Where(branch => branch.Kind == LiveBranchKind.Supply)];
        FirstFed = branches.Where(branch => branch.Kind is LiveBranchKind.Input or LiveBranchKind.Held).Select(branch => branch.Index).Append(branches.Length).Min();
        Outlet = [.. branches.Where(branch => branch is { Subject: MainsBranches.Subject, Name: MainsBranches.Breaker or MainsBranches.Neutral })];
        var (order, _) = EliminationOrder.MinimumDegree(
            nodeCount, branches.Where(branch => branch is { A: >= 0, B: >= 0 } && branch.A != branch.B).Select(branch => (branch.A, branch.B)));
        var position = new int[nodeCount];
        for (var place = 0; place < nodeCount; place++)
            position[order[place]] = place;
        Pattern = new SparsePattern(position, [.. branches.Select(branch => (branch.A, branch.B))]);
    }

    public WiringContext Context { get; }

    public MainsSource? Mains { get; }

    /// <summary>Number of nodes; those of the wiring network come first, under their own numbers.</summary>
    public int NodeCount { get; }

    /// <summary>The branches; the elements of the wiring network come first, under their own numbers.</summary>
    public LiveBranch[] Branches { get; }

    /// <summary>Conductance of each branch of the sound machine while it conducts.</summary>
    public double[] Siemens { get; }

    /// <summary>True for branches that something opens and closes.</summary>
    public bool[] Moves { get; }

    /// <summary>Numbers of the branches that are a resistance as long as they conduct: paths, contacts and switches.</summary>
    public int[] Paths { get; }

    /// <summary>Those of <see cref="Paths"/> that something opens, closes or interrupts.</summary>
    public int[] MovingPaths { get; }

    /// <summary>Numbers of the sources of the mains.</summary>
    public int[] MainsSources { get; }

    /// <summary>Branches that interrupt an overcurrent.</summary>
    public LiveBranch[] Protective { get; }

    /// <summary>Sources of direct voltage.</summary>
    public LiveBranch[] Supplies { get; }

    /// <summary>Number of the first branch that is an input or an output of what another voltage feeds; the number of branches when none is.</summary>
    public int FirstFed { get; }

    /// <summary>Line and neutral of the outlet.</summary>
    public LiveBranch[] Outlet { get; }

    public LiveControl[] Controls { get; }

    public LiveDrive[] Drives { get; }

    public LiveResidualTrip[] ResidualTrips { get; }

    public IReadOnlyDictionary<(string Part, string Command), int> Commands { get; }

    /// <summary>What of the factor of its network may hold numbers.</summary>
    public SparsePattern Pattern { get; }

    /// <summary>True for what belongs to the machine and nothing ever opens.</summary>
    public bool IsLasting(LiveBranch branch) =>
        branch is { RatedAmperes: null, Subject: not MainsBranches.Subject } && !Moves[branch.Index] && !_residual.Contains(branch.Index);

    /// <summary>Angular frequency of the mains.</summary>
    public double RadiansPerSecond => 2 * Math.PI * (Mains?.Hertz ?? 50);
}

/// <summary>A control of a part.</summary>
internal sealed record LiveControl(string Part, string Name, string[] Positions, int Rest);

/// <summary>A coil and what it moves.</summary>
internal sealed record LiveDrive(int A, int B, int Control, int Position, double PullsInVolts, double DropsOutVolts);

/// <summary>A residual-current trip: the contacts that it watches and opens.</summary>
internal sealed record LiveResidualTrip(string Part, int[] Branches, double RatedAmperes);
