using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>A check of the plan, for people.</summary>
/// <param name="Number">Place in the order, from 1.</param>
/// <param name="Check">The check.</param>
/// <param name="Expected">What it should read, in words and units.</param>
/// <param name="Catches">How many faults it surely catches.</param>
public sealed record PlannedCheck(int Number, Check Check, string Expected, int Catches)
{
    /// <summary>Which leads stay where the check before left them, in a sentence; empty when none does.</summary>
    public string Leads { get; init; } = "";

    /// <summary>True when it stands in the plan for pairs of mistakes that would hide each other.</summary>
    public bool IsForPairs { get; init; }
}
