using Proveout.Engine.Machine;

namespace Proveout.Engine.Faults;

/// <summary>One thing to observe, and what the machine as designed shows.</summary>
/// <param name="Id">Identifier, stable as long as the machine is; lower case with hyphens.</param>
/// <param name="Kind">Kind of check, such as <c>resistance</c>.</param>
/// <param name="SetUp">Identifier of the state in which it is done.</param>
/// <param name="Title">A few words.</param>
/// <param name="Instruction">What to do, in a sentence or two.</param>
/// <param name="Points">Where to touch: first the red lead, then the black one; empty for a check without leads.</param>
/// <param name="Unit">Unit of its readings, as shown.</param>
/// <param name="Expectation">What the machine as designed shows.</param>
/// <param name="Why">Why it shows that, in a sentence.</param>
/// <param name="CostSeconds">Time that it takes once the set-up stands.</param>
public sealed record Check(
    string Id,
    string Kind,
    string SetUp,
    string Title,
    string Instruction,
    ValueList<CheckPoint> Points,
    string Unit,
    ReadingInterval Expectation,
    string Why,
    double CostSeconds)
{
    /// <summary>False when the leads may be exchanged: neither the expectation nor the interval under any fault depends on which is where.</summary>
    public bool MindsPolarity { get; init; } = true;

    /// <summary>True when it strains what it measures, so that everything else in its set-up is to be right before.</summary>
    public bool DoLast { get; init; }

    /// <summary>Judges a reading in the check's unit; over range is <see cref="ReadingInterval.OverRange"/>.</summary>
    public Verdict Judge(double reading) =>
        Expectation == ReadingInterval.Anything ? Verdict.CannotTell
        : Expectation.Contains(reading) ? Verdict.Pass
        : Verdict.Fail;
}
