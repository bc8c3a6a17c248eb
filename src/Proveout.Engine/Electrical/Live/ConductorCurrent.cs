using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What a conductor carries in a live state.</summary>
/// <param name="Conductor">The conductor.</param>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Amperes">Direct and alternating current taken together, in amperes: what heats it.</param>
public sealed record ConductorCurrent(string Conductor, TerminalReference From, TerminalReference To, double Amperes);
