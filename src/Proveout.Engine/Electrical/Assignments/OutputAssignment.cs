using UnitsNet;

namespace Proveout.Engine.Electrical;

/// <summary>What an output of a controller drives, as wired.</summary>
/// <param name="Part">The board.</param>
/// <param name="Command">What the board calls the output.</param>
/// <param name="Terminals">Its terminals.</param>
/// <param name="WiredTo">Parts at the other ends of its conductors.</param>
/// <param name="Loads">What works when it alone is commanded, in the sound machine; empty when nothing is seen to.</param>
/// <param name="Current">Current through it then; the larger one where it has several paths.</param>
/// <param name="IsMotor">True for an output that holds a current in windings.</param>
public sealed record OutputAssignment(
    string Part,
    string Command,
    IReadOnlyList<string> Terminals,
    IReadOnlyList<string> WiredTo,
    IReadOnlyList<DrivenLoad> Loads,
    ElectricCurrent Current,
    bool IsMotor);
