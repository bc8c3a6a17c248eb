using System.Collections.Concurrent;

namespace Proveout.Engine.Faults;

/// <summary>Faults made together, each question simulated once for all threads: a plan that grows asks most of them again on every turn.</summary>
/// <remarks>What faults overturn is not kept: those lists are long and soon made.</remarks>
public sealed class RememberedInteractions : IFaultInteractions
{
    private readonly IFaultInteractions _own;
    private readonly ConcurrentDictionary<(int One, int Two, int Check), bool> _caught;
    private readonly ConcurrentDictionary<(int One, int Two), TogetherShows> _shows;

    /// <summary>Begins with nothing known.</summary>
    /// <param name="interactions">Who is asked what is not known yet.</param>
    public RememberedInteractions(IFaultInteractions interactions)
        : this(interactions, new(), new())
    {
    }

    private RememberedInteractions(
        IFaultInteractions own, ConcurrentDictionary<(int One, int Two, int Check), bool> caught, ConcurrentDictionary<(int One, int Two), TogetherShows> shows) =>
        (_own, _caught, _shows) = (own, caught, shows);

    /// <inheritdoc/>
    public ReadingInterval? Shown(ReadOnlySpan<int> faults, int check) => _own.Shown(faults, check);

    /// <inheritdoc/>
    public IReadOnlyList<int> Contradicting(int fault) => _own.Contradicting(fault);

    /// <inheritdoc/>
    public bool IsSurelyCaught(ReadOnlySpan<int> faults, int check) => faults is [var one, var two]
        ? _caught.GetOrAdd((one, two, check), static (asked, own) => own.IsSurelyCaught([asked.One, asked.Two], asked.Check), _own)
        : _own.IsSurelyCaught(faults, check);

    /// <inheritdoc/>
    public int[]? Overturning(ReadOnlySpan<int> faults, int check, bool isCaught, bool thoroughly) =>
        _own.Overturning(faults, check, isCaught, thoroughly);

    /// <inheritdoc/>
    public TogetherShows ShowsTogether(ReadOnlySpan<int> faults) => faults is [var one, var two]
        ? _shows.GetOrAdd((one, two), static (asked, own) => own.ShowsTogether([asked.One, asked.Two]), _own)
        : _own.ShowsTogether(faults);

    /// <inheritdoc/>
    public IFaultInteractions ForAnotherThread() => new RememberedInteractions(_own.ForAnotherThread(), _caught, _shows);
}
