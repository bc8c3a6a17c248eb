namespace Proveout.Engine.Faults;

/// <summary>Responses that were all worked out before.</summary>
/// <param name="checks">The checks.</param>
/// <param name="responses">What each fault changes.</param>
internal sealed class StoredResponses(IReadOnlyList<Check> checks, FaultResponse[] responses) : IFaultResponses
{
    /// <inheritdoc/>
    public int Count => responses.Length;

    /// <inheritdoc/>
    public FaultResponse Of(int fault) => responses[fault];

    /// <inheritdoc/>
    public FaultResponse[] Of(IReadOnlyList<int> faults) => [.. faults.Select(Of)];

    /// <inheritdoc/>
    public IEnumerable<int> Catching(int fault)
    {
        var response = responses[fault];
        for (var place = 0; place < response.Checks.Length; place++)
            if (response.Intervals[place].IsDisjointFrom(checks[response.Checks[place]].Expectation))
                yield return response.Checks[place];
    }

    /// <inheritdoc/>
    public bool IsCatching(int fault, int check) => responses[fault].At(check) is { } interval && interval.IsDisjointFrom(checks[check].Expectation);
}
