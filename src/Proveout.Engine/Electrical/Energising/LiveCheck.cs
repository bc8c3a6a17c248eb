using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A check on the energised machine, with the mistakes that it excludes for the stages after it.</summary>
/// <param name="Check">What to observe and what the sound machine shows.</param>
/// <param name="Excludes">Indices of the faults under which it would read otherwise.</param>
public sealed record LiveCheck(Check Check, ValueList<int> Excludes);
