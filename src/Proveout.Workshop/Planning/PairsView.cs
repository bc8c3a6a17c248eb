namespace Proveout.Workshop;

/// <summary>What a plan does against two mistakes made together, for people.</summary>
/// <param name="Simulated">Pairs of mistakes that can be made together.</param>
/// <param name="Caught">How many of them the plan surely catches.</param>
/// <param name="Masked">How many it does not catch although it catches one of the two, or both, alone.</param>
/// <param name="LeftToTheEye">How many it does not catch because it catches neither of the two alone.</param>
/// <param name="AddedChecks">Identifiers of the checks that stand in the plan for pairs.</param>
/// <param name="Groups">The masked pairs, those alike together, most dangerous first.</param>
public sealed record PairsView(
    long Simulated, long Caught, long Masked, long LeftToTheEye, IReadOnlyList<string> AddedChecks, IReadOnlyList<PairGroup> Groups)
{
    /// <summary>No pair was simulated.</summary>
    public static PairsView None { get; } = new(0, 0, 0, 0, [], []);

    /// <summary>How many pairs there are and what becomes of them, in sentences.</summary>
    public string Summary => FormattableString.Invariant(
        $"{Simulated:N0} pairs of mistakes can be made together; the plan surely catches {Caught:N0} of them. {LeftToTheEye:N0} join two mistakes that are left to the eye each for itself. In {Masked:N0} the one hides the other, though the plan catches at least one of them alone. ")
        + Added;

    private string Added => AddedChecks.Count switch
    {
        0 => "No check had to be added for pairs.",
        1 => "1 check was added for pairs that can hurt or destroy.",
        var count => FormattableString.Invariant($"{count} checks were added for pairs that can hurt or destroy."),
    };
}
