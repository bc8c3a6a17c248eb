using System.Collections.Concurrent;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Simulates every wiring fault of a machine at every candidate check.</summary>
public sealed class WiringCampaign
{
    private const int FaultsAReport = 256;

    private readonly IReadOnlyList<ElectricalSetUp> _setUps;
    private readonly Dictionary<int, StateNetwork> _restStates;
    private readonly CandidateCheck[] _candidates;
    private readonly Lazy<ReadingReason>[] _reasons;
    private readonly Lazy<ICheckTable[]> _tables;
    private readonly SeriesElements _series;

    /// <summary>Prepares the campaign: network, set-ups, candidate checks with their expectations, faults.</summary>
    /// <param name="design">The machine; every reference in it resolves.</param>
    /// <exception cref="ArgumentException">The machine is too large: <see cref="CampaignSize"/> says so beforehand.</exception>
    public WiringCampaign(MachineDesign design)
    {
        if (CampaignSize.Refuse(design) is { } refusal)
            throw new ArgumentException(refusal.Message, nameof(design));
        Context = new WiringContext(WiringNetworkBuilder.Build(design));
        _setUps = DeadSetUps.Of(design);
        var strays = new StrayPaths(Context.Wiring);
        _restStates = _setUps.Index().Where(item => item.Item.Operated is null).ToDictionary(item => item.Index, item => new StateNetwork(Context.Wiring, item.Item.State, strays));
        _reasons = [.. _setUps.Select(setUp => new Lazy<ReadingReason>(() => new ReadingReason(Context.Wiring, setUp.State)))];
        _candidates = [.. CandidateChecks.Of(Context, _setUps, RestOf)];
        _tables = new Lazy<ICheckTable[]>(new CheckTables(Context, _setUps, _candidates, RestOf).Make);
        _series = SeriesAt(_candidates);
        Faults = [.. WiringFaultRules.Generate(Context)];
    }

    /// <summary>The machine's wiring.</summary>
    public WiringContext Context { get; }

    /// <summary>Every fault that is simulated.</summary>
    public IReadOnlyList<WiringFault> Faults { get; }

    /// <summary>Number of candidate checks.</summary>
    public int CandidateCount => _candidates.Length;

    /// <summary>Why a check shows what it shows, in a sentence.</summary>
    /// <param name="check">Index of the check.</param>
    public string Explain(int check) => _reasons[_candidates[check].SetUp].Value.Between(_candidates[check].A, _candidates[check].B);

    /// <summary>The nodes that a check touches.</summary>
    /// <param name="check">Index of the check.</param>
    public (int Red, int Black) NodesOf(int check) => (_candidates[check].A, _candidates[check].B);

    /// <summary>Numbers of the elements that carry no current in a set-up, because a plug is apart or a contact is open.</summary>
    /// <param name="setUp">Index of the set-up.</param>
    public IReadOnlyList<int> OpenElementsOf(int setUp) =>
        [.. Context.Wiring.Elements.Where(element => !StateNetwork.Conducts(Context.Wiring, _setUps[setUp].State, element)).Select(element => element.Index)];

    /// <summary>Simulates every fault at every check, both limits, on all processors.</summary>
    /// <param name="cancellation">Stops the run.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public FaultDictionary Run(CancellationToken cancellation = default) => Run(null, cancellation);

    /// <summary>Simulates every fault at every check, both limits, on all processors.</summary>
    /// <param name="progress">Told the share that is done, 0 to 1, from the threads that run it.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public FaultDictionary Run(IProgress<double>? progress, CancellationToken cancellation)
    {
        var tables = Tables();
        var alike = _series.FirstAlike(Faults);
        return DictionaryOf(new StoredResponses(Checks, OfEach(alike, () => new FaultResponder(tables), (responder, fault) => responder.Respond(fault), progress, cancellation)));
    }

    /// <summary>Finds for every fault which checks surely catch it, both limits, on all processors; what else a fault changes is simulated once the dictionary is asked for it.</summary>
    /// <param name="progress">Told the share that is done, 0 to 1, from the threads that run it.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public FaultDictionary RunVerdicts(IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        var tables = Tables();
        Parallel.ForEach(tables.OfType<PortTable>(), table => table.Catching.Prepare());
        var alike = _series.FirstAlike(Faults);
        var catching = OfEach(alike, () => new FaultCatcher(tables), (catcher, fault) => catcher.Catching(fault), progress, cancellation);
        return DictionaryOf(new SimulatedResponses(tables, Faults, alike, catching));
    }

    private Check[] Checks => [.. _candidates.Select(candidate => candidate.Check)];

    private FaultDictionary DictionaryOf(IFaultResponses responses) => new([.. _setUps.Select(setUp => setUp.Text)], Checks, [.. Faults.Select(fault => fault.Fault)], responses);

    // Faults that change the same place alike have the same answer.
    private TFound[] OfEach<TWorker, TFound>(int[] first, Func<TWorker> newWorker, Func<TWorker, WiringFault, TFound> find, IProgress<double>? progress, CancellationToken cancellation)
        where TWorker : class
    {
        var found = new TFound[Faults.Count];
        var idle = new ConcurrentStack<TWorker>();
        var done = 0;
        Parallel.For(
            0,
            Faults.Count,
            new ParallelOptions { CancellationToken = cancellation },
            () => idle.TryPop(out var ready) ? ready : newWorker(),
            (fault, _, worker) =>
            {
                if (first[fault] == fault)
                    found[fault] = find(worker, Faults[fault]);
                if (Interlocked.Increment(ref done) is var count && (count % FaultsAReport == 0 || count == Faults.Count))
                    progress?.Report((double)count / Faults.Count);
                return worker;
            },
            idle.Push);
        return Array.ConvertAll(first, like => found[like]);
    }

    /// <summary>What every candidate check may show when several faults are made at once; of a sound machine when none is.</summary>
    /// <param name="faults">Indices of the faults.</param>
    /// <exception cref="ArgumentException">Two of the faults change the same element.</exception>
    public IReadOnlyList<ReadingInterval> SimulateTogether(IReadOnlyList<int> faults)
    {
        ReadingInterval[] shown = [.. _candidates.Select(candidate => candidate.Check.Expectation)];
        if (faults.Count == 0)
            return shown;
        var response = new FaultResponder(Tables()).Respond(TogetherSimulation.Merge(faults.Select(fault => Faults[fault])));
        for (var place = 0; place < response.Checks.Length; place++)
            shown[response.Checks[place]] = response.Intervals[place];
        return shown;
    }

    // One with a control operated is a change of that at rest, for a large machine has hundreds.
    private StateNetwork RestOf(int setUp) =>
        _setUps[setUp].Operated is null
            ? _restStates[setUp]
            : _restStates[_setUps.Index().First(other => other.Item.Operated is null && other.Item.State.PlugsApart == _setUps[setUp].State.PlugsApart).Index];

    /// <summary>The resistances of each set-up, in the order of the set-ups.</summary>
    internal PortTable[] PortTables() => [.. Tables().OfType<PortTable>().Where(table => table.Candidates is [{ Mode: ResistanceMode }, ..])];

    /// <summary>What every candidate check shows of the machine as designed.</summary>
    internal IEnumerable<ReadingInterval> Expectations => _candidates.Select(candidate => candidate.Check.Expectation);

    /// <summary>Every check, in the order of the checks.</summary>
    internal ICheckTable[] Tables() => _tables.Value;

    // Junctions and insulation are elements too: where one ends, the two that stand in series are not alone.
    private SeriesElements SeriesAt(CandidateCheck[] candidates)
    {
        var looked = candidates.SelectMany(candidate => new[] { candidate.A, candidate.B, candidate.TiedTo ?? candidate.A }).ToHashSet();
        var ends = Context.Wiring.Elements.SelectMany(element => new[] { (element.A, element.Index), (element.B, element.Index) });
        return new SeriesElements(Context.Wiring, ends, (node, _, _) => !looked.Contains(node.Index));
    }

    internal static ICheckWorker[] Workers(ICheckTable[] tables)
    {
        var workers = new List<ICheckWorker>(tables.Length);
        foreach (var table in tables)
            workers.Add(table.NewWorker(workers));
        return [.. workers];
    }
}
