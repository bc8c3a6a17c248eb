namespace Proveout.Workshop;

/// <summary>The last word of one build on one check.</summary>
/// <param name="Value">The reading in the unit of the check, infinite for over range; NaN when the check was left out.</param>
/// <param name="HasFailed">True when it, or one before it, failed when it was entered.</param>
internal readonly record struct CheckWord(double Value, bool HasFailed)
{
    /// <summary>True when it was left out.</summary>
    public bool IsSkipped => double.IsNaN(Value);
}
