using System.Runtime.InteropServices;

namespace Proveout.Engine.Faults;

/// <summary>Pairs of two faults neither of which the plan surely catches alone.</summary>
/// <remarks>Neither does any other check catch one of them alone. So only checks that one of them, or both, make touch the other need be simulated.</remarks>
internal sealed class UncaughtPairs
{
    private readonly bool[] _isPlanned;
    private readonly Func<int, int, Severity> _severity;
    private readonly Dictionary<int, List<int>>?[] _checksOfOthers;

    /// <summary>Lists which pairs may be caught by which of some checks.</summary>
    /// <param name="dictionary">What every check shows under every fault alone.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="screen">Which faults the plan catches alone.</param>
    /// <param name="asked">Of the others, which may be caught together by each of the checks that are asked; the screen of the plan where only its checks are.</param>
    /// <param name="severity">What two faults together do.</param>
    public UncaughtPairs(FaultDictionary dictionary, CheckPlan plan, PairScreen screen, PairScreen asked, Func<int, int, Severity> severity)
    {
        _severity = severity;
        _isPlanned = new bool[dictionary.Checks.Count];
        foreach (var check in plan.Checks)
            _isPlanned[check] = true;
        int[] faults = [.. screen.Uncaught];
        _checksOfOthers = new Dictionary<int, List<int>>?[dictionary.Faults.Count];
        foreach (var fault in faults)
            _checksOfOthers[fault] = [];
        foreach (var fault in faults)
            foreach (var (check, others) in asked.CatchingWith(fault))
                foreach (var other in others)
                    if (other != fault && !screen.IsCaught(other) && IsAsked(fault, other, check) && MayCatch(asked, fault, other, check))
                        Add(Math.Min(fault, other), Math.Max(fault, other), check);
    }

    /// <summary>The pairs of a fault with those after it.</summary>
    public PairRow Row(int fault, IFaultInteractions own)
    {
        var caught = 0;
        List<MaskedPair> masked = [];
        var contradicting = own.Contradicting(fault);
        foreach (var (other, checks) in _checksOfOthers[fault]!.OrderBy(pair => pair.Key))
        {
            if (contradicting.Contains(other))
                continue;
            Span<int> both = [fault, other];
            List<int> catching = [];
            foreach (var check in checks.OrderByDescending(check => _isPlanned[check]))
                if (own.IsSurelyCaught(both, check))
                {
                    catching.Add(check);
                    if (_isPlanned[check])
                        break;
                }

            if (catching.Count == 0)
                continue;
            if (_isPlanned[catching[^1]])
                caught++;
            else if (new MaskedPair(fault, other, PairKind.NoneCaught, _severity(fault, other), new([.. catching.Order()], false)) is { AsksForCheck: true } pair)
                masked.Add(pair);
        }

        return new PairRow(caught, masked);
    }

    // Checks outside the plan are of use only for pairs that ask for one.
    private bool IsAsked(int fault, int other, int check) => _isPlanned[check] || _severity(fault, other) >= Severity.Damage;

    // Where the check touches both, the verdict under either one stands unless the other overturns it; so both must, and it is enough to ask the first.
    private static bool MayCatch(PairScreen asked, int fault, int other, int check) =>
        !asked.IsTouched(other, check) || (fault < other && Array.BinarySearch(asked.CatchingWith(other, check), fault) >= 0);

    private void Add(int fault, int other, int check)
    {
        ref var checks = ref CollectionsMarshal.GetValueRefOrAddDefault(_checksOfOthers[fault]!, other, out _);
        (checks ??= []).Add(check);
    }
}
