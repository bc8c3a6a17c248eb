using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>One end of a conductor.</summary>
/// <param name="Terminal">What it lands on.</param>
/// <param name="Part">The part of that terminal.</param>
/// <param name="Termination">How it ends there.</param>
/// <param name="Beside">Other conductors on the same terminal.</param>
public sealed record WireEnd(TerminalReference Terminal, Part Part, Termination Termination, IReadOnlyList<string> Beside);
