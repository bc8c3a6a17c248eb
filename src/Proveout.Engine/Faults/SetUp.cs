using Proveout.Engine.Machine;

namespace Proveout.Engine.Faults;

/// <summary>The state in which a machine is measured: what is apart, what is pressed.</summary>
/// <param name="Id">Identifier, lower case with hyphens.</param>
/// <param name="Title">A few words.</param>
/// <param name="Instructions">What to do to get there, a sentence each.</param>
/// <param name="Cautions">What can hurt while getting there or measuring, a sentence each; shown before the instructions.</param>
/// <param name="CostSeconds">Time that it takes to get there.</param>
public sealed record SetUp(string Id, string Title, ValueList<string> Instructions, ValueList<string> Cautions, double CostSeconds)
{
    /// <summary>What is energised in it.</summary>
    public Phase Phase { get; init; } = Phase.Dead;
}
