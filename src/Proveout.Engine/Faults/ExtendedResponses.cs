namespace Proveout.Engine.Faults;

/// <summary>Responses at the checks of a dictionary and at further checks behind them.</summary>
/// <param name="own">Those at its own checks.</param>
/// <param name="further">Those at the further checks, whose indices count from the first of them.</param>
/// <param name="ownChecks">Number of its own checks.</param>
internal sealed class ExtendedResponses(IFaultResponses own, IFaultResponses further, int ownChecks) : RememberedResponses(own.Count)
{
    /// <inheritdoc/>
    public override IEnumerable<int> Catching(int fault) => own.Catching(fault).Concat(further.Catching(fault).Select(check => ownChecks + check));

    /// <inheritdoc/>
    public override bool IsCatching(int fault, int check) => check < ownChecks ? own.IsCatching(fault, check) : further.IsCatching(fault, check - ownChecks);

    /// <inheritdoc/>
    protected override FaultResponse Find(int fault)
    {
        var (first, second) = (own.Of(fault), further.Of(fault));
        return new([.. first.Checks, .. second.Checks.Select(check => ownChecks + check)], [.. first.Intervals, .. second.Intervals]);
    }
}
