namespace Proveout.Engine.Faults;

/// <summary>What every check shows under every fault, simulated before anything is measured.</summary>
/// <remarks>Fault dictionary as in Bandler and Salama, Proceedings of the IEEE 73 (1985) 1279-1325, with intervals in place of nominal signatures.</remarks>
public sealed class FaultDictionary
{
    private readonly IFaultResponses _responses;
    private readonly Lazy<Dictionary<string, int>> _checkIndex;
    private readonly Lazy<ShownTable> _shown;

    /// <summary>Makes a dictionary.</summary>
    /// <param name="setUps">The set-ups that checks refer to, in the order to do them.</param>
    /// <param name="checks">Every candidate check.</param>
    /// <param name="faults">Every fault.</param>
    /// <param name="responses">What each fault changes, in the order of <paramref name="faults"/>.</param>
    public FaultDictionary(IReadOnlyList<SetUp> setUps, IReadOnlyList<Check> checks, IReadOnlyList<Fault> faults, FaultResponse[] responses)
        : this(setUps, checks, faults, new StoredResponses(checks, responses))
    {
    }

    /// <summary>Makes a dictionary of responses that may be worked out only once they are asked for.</summary>
    /// <param name="setUps">The set-ups that checks refer to, in the order to do them.</param>
    /// <param name="checks">Every candidate check.</param>
    /// <param name="faults">Every fault.</param>
    /// <param name="responses">What each fault changes, in the order of <paramref name="faults"/>.</param>
    public FaultDictionary(IReadOnlyList<SetUp> setUps, IReadOnlyList<Check> checks, IReadOnlyList<Fault> faults, IFaultResponses responses)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(responses.Count, faults.Count);
        (SetUps, Checks, Faults, _responses) = (setUps, checks, faults, responses);
        _checkIndex = new(() => Enumerable.Range(0, checks.Count).ToDictionary(index => checks[index].Id, StringComparer.Ordinal));
        _shown = new(() => ShownTable.Of(checks, responses.Of([.. Enumerable.Range(0, responses.Count)])));
    }

    private FaultDictionary(FaultDictionary other, IReadOnlyList<Fault> faults)
    {
        (SetUps, Checks, Faults, _responses) = (other.SetUps, other.Checks, faults, other._responses);
        (_checkIndex, _shown) = (other._checkIndex, other._shown);
    }

    /// <summary>The set-ups, in the order to do them.</summary>
    public IReadOnlyList<SetUp> SetUps { get; }

    /// <summary>Every candidate check.</summary>
    public IReadOnlyList<Check> Checks { get; }

    /// <summary>Every fault.</summary>
    public IReadOnlyList<Fault> Faults { get; }

    /// <summary>The same intervals sorted into classes, for choosing checks; made at first use.</summary>
    internal ShownTable Shown => _shown.Value;

    /// <summary>The same dictionary with other prior rates.</summary>
    /// <param name="priorOf">Probability of each fault, above 0 and below 1.</param>
    public FaultDictionary WithPriors(Func<Fault, double> priorOf) => new(this, [.. Faults.Select(fault => fault with { Prior = priorOf(fault) })]);

    /// <summary>The same dictionary with other words, severities or prior rates of its faults.</summary>
    /// <param name="faults">The faults, in their order.</param>
    public FaultDictionary WithFaults(IReadOnlyList<Fault> faults)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(faults.Count, Faults.Count);
        return new(this, faults);
    }

    /// <summary>The same dictionary with further checks behind its own.</summary>
    /// <param name="setUps">Set-ups of the further checks, with identifiers of their own.</param>
    /// <param name="checks">The further checks.</param>
    /// <param name="responses">What each fault changes among them, in the order of <see cref="Faults"/>; indices count from the first further check.</param>
    public FaultDictionary Extended(IReadOnlyList<SetUp> setUps, IReadOnlyList<Check> checks, FaultResponse[] responses)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(responses.Length, Faults.Count);
        return new([.. SetUps, .. setUps], [.. Checks, .. checks], Faults, new ExtendedResponses(_responses, new StoredResponses(checks, responses), Checks.Count));
    }

    /// <summary>Index of the check with an identifier, or null.</summary>
    public int? IndexOfCheck(string id) => _checkIndex.Value.TryGetValue(id, out var index) ? index : null;

    /// <summary>What a fault changes.</summary>
    public FaultResponse ResponseOf(int fault) => _responses.Of(fault);

    /// <summary>What each of some faults changes; for many faults quicker than one by one.</summary>
    public FaultResponse[] ResponsesOf(IReadOnlyList<int> faults) => _responses.Of(faults);

    /// <summary>What a check may show under a fault.</summary>
    public ReadingInterval IntervalOf(int fault, int check) => ResponseOf(fault).At(check) ?? Checks[check].Expectation;

    /// <summary>True when, wherever inside their tolerances the parts lie, the reading under the fault cannot be one of the sound machine.</summary>
    public bool IsSurelyCaught(int fault, int check) => _responses.IsCatching(fault, check);

    /// <summary>Indices of the checks that surely catch a fault, rising.</summary>
    public IEnumerable<int> ChecksThatCatch(int fault) => _responses.Catching(fault);
}
