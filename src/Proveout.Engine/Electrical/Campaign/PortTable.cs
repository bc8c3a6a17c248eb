using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>The ports that are measured in one set-up, with their resistances in the machine as designed.</summary>
internal sealed class PortTable : ICheckTable
{
    // A hand-held meter tells one part in some thousands, a bench meter one in a million: common practice.
    private const double NoMeterTells = 1e-7;

    // Where junctions limit what the sound machine reads: by how much potentials move goes into a resistance with its square (docs/methods/network-and-intervals.md).
    private const double NoJunctionTells = 1e-9;

    private readonly bool _hasInsulation;
    private readonly double[] _unseenShares;
    private readonly Lazy<LoadPorts> _loads;
    private readonly Lazy<OpenPorts> _open;
    private readonly Lazy<CatchPorts> _catching;
    private readonly ReadingInterval[] _expectations;
    private readonly MeterMode[] _modes;

    /// <summary>Makes the table of the candidates of one set-up, which follow each other from an index on.</summary>
    /// <param name="rest">The network with all controls at rest and the same plugs apart.</param>
    /// <param name="operated">Elements that the operated control switches.</param>
    /// <param name="candidates">The candidates of the set-up.</param>
    /// <param name="firstCheck">Index of the first of them among all checks.</param>
    /// <param name="tied">Two nodes that a person joins by a short lead for these checks; null when none.</param>
    /// <param name="diodes">Diode tests of the same set-up, whose ports follow those of the candidates.</param>
    public PortTable(
        StateNetwork rest,
        NetworkElement[] operated,
        CandidateCheck[] candidates,
        int firstCheck,
        (int A, int B)? tied = null,
        CandidateCheck[]? diodes = null)
    {
        (Candidates, FirstCheck, Rest) = (candidates, firstCheck, rest);
        _hasInsulation = Array.Exists(candidates, candidate => candidate.Mode is InsulationMode);
        _expectations = Array.ConvertAll(candidates, candidate => candidate.Check.Expectation);
        _modes = Array.ConvertAll(candidates, candidate => candidate.Mode);
        var pairs = Array.ConvertAll(candidates, candidate => (candidate.A, candidate.B));
        (int, int)[] ports = [.. pairs, .. (diodes ?? []).Select(diode => (diode.A, diode.B))];
        Good = Array.ConvertAll(pairs, pair => rest.Resistance(pair.A, pair.B));
        _unseenShares = [.. ports.Select((_, port) => port < candidates.Length && (operated.Length > 0 || tied is not null || IsSharpened(port)) ? NoJunctionTells : NoMeterTells)];
        Low = new LimitPorts(rest, ports, operated, tied, diodes is { Length: > 0 }, _unseenShares);
        _loads = new(() => LoadsAmong());
        _open = new(() => new OpenPorts(Low.Ports));
        _catching = new(() => new CatchPorts(this, diodes ?? []));
        High = new LimitPorts(rest, ports, operated, tied, unseenShares: _unseenShares, low: Low);
        if (Low.HasControls)
        {
            var worker = new PortWorker(this);
            Good = worker.LimitsAtRest();
            PartsStrays = worker.Faulty.MovesPieces && worker.Faulty.ChangedStrays.PartsGroups();
        }
    }

    /// <inheritdoc/>
    public ICheckWorker NewWorker(IReadOnlyList<ICheckWorker> before)
    {
        var (likewise, atRest) = OfThread(before.OfType<PortWorker>(), worker => worker.Table);
        return new PortWorker(this, likewise, atRest);
    }

    /// <inheritdoc/>
    public ICatchWorker NewCatchWorker(IReadOnlyList<ICatchWorker> before)
    {
        var (likewise, atRest) = OfThread(before.OfType<PortCatchWorker>(), worker => worker.Table);
        return new PortCatchWorker(this, likewise, atRest);
    }

    /// <summary>The network with all controls at rest.</summary>
    public StateNetwork Rest { get; }

    /// <summary>True when the operated control parts what junctions and insulation join, so that a fault may join it otherwise than with all controls at rest.</summary>
    public bool PartsStrays { get; }

    /// <summary>The candidates.</summary>
    public CandidateCheck[] Candidates { get; }

    /// <summary>What a candidate shows of the sound machine.</summary>
    public ReadingInterval ExpectationOf(int index) => _expectations[index];

    /// <summary>How a candidate is measured.</summary>
    public MeterMode ModeOf(int index) => _modes[index];

    /// <summary>True when a candidate is an insulation test: at 500 V a junction may do anything.</summary>
    public bool IsInsulation(int index) => _hasInsulation && _modes[index] is InsulationMode;

    /// <summary>True when no one could tell two limits of a port, in ohms, from each other, or both are infinite.</summary>
    public bool IsSame(int index, double one, double other) => PortWorker.Same(one, other, _unseenShares[index]);

    /// <summary>Index of the first of them among all checks.</summary>
    public int FirstCheck { get; }

    /// <summary>What of junctions and insulation touches each island of the low network with all controls at rest.</summary>
    public StrayPieces Strays => Rest.Strays;

    /// <summary>The ports that junctions and insulation can alter, and those that are open.</summary>
    public LoadPorts Loads => _loads.Value;

    /// <summary>The ports whose leads are on two islands of the low network.</summary>
    public OpenPorts Open => _open.Value;

    /// <summary>The ports as far as they can catch a fault.</summary>
    public CatchPorts Catching => _catching.Value;

    /// <summary>The ports with every resistance at its low limit.</summary>
    public LimitPorts Low { get; }

    /// <summary>The ports with every resistance at its high limit.</summary>
    public LimitPorts High { get; }

    /// <summary>Limits of each port in the machine as designed, in ohms.</summary>
    public (double LowOhms, double HighOhms)[] Good { get; }

    /// <summary>Some of the ports that junctions and insulation can alter, and of those that are open; all when nothing says which.</summary>
    public LoadPorts LoadsAmong(Predicate<int>? isCounted = null) =>
        new(Low.Ports, Rest.Strays, port => port < Candidates.Length ? ModeOf(port) : DiodeTable.Mode, isCounted);

    // Workers on the same network: one of another set-up with a control operated, and that with all controls at rest.
    private (T? Likewise, T? AtRest) OfThread<T>(IEnumerable<T> before, Func<T, PortTable> tableOf)
        where T : class
    {
        if (!Low.HasControls)
            return default;
        var onRest = before.Where(worker => tableOf(worker).Rest == Rest).ToArray();
        return (Array.Find(onRest, worker => tableOf(worker).Low.HasControls), Low.IsTied ? null : Array.Find(onRest, worker => !tableOf(worker).Low.HasControls));
    }

    // Junctions are looked at more closely in the sound machine than under a fault: JunctionBounds.
    private bool IsSharpened(int index) =>
        Candidates[index].Mode.Shown(Good[index].LowOhms, Math.Max(Good[index].LowOhms, Good[index].HighOhms)) != Candidates[index].Check.Expectation;
}
