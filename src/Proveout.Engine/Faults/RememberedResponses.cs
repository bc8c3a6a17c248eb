namespace Proveout.Engine.Faults;

/// <summary>Responses that are worked out once they are asked for, and kept.</summary>
/// <param name="count">Number of faults.</param>
internal abstract class RememberedResponses(int count) : IFaultResponses
{
    private readonly FaultResponse?[] _known = new FaultResponse?[count];

    /// <inheritdoc/>
    public int Count => _known.Length;

    /// <inheritdoc/>
    // Two threads that ask at the same time find the same, and either's is kept.
    public FaultResponse Of(int fault) => Volatile.Read(ref _known[fault]) ?? Interlocked.CompareExchange(ref _known[fault], Find(fault), null) ?? _known[fault]!;

    /// <inheritdoc/>
    public FaultResponse[] Of(IReadOnlyList<int> faults)
    {
        var found = new FaultResponse[faults.Count];
        Parallel.For(0, found.Length, place => found[place] = Of(faults[place]));
        return found;
    }

    /// <inheritdoc/>
    public abstract IEnumerable<int> Catching(int fault);

    /// <inheritdoc/>
    public abstract bool IsCatching(int fault, int check);

    /// <summary>Works out what a fault changes; called by several threads at once.</summary>
    protected abstract FaultResponse Find(int fault);
}
