using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Conductors to tug again, because hands were at the terminals beside them.</summary>
/// <param name="Place">The part, and its connector where the terminals are of one.</param>
/// <param name="Conductors">Identifiers of every conductor that lands there.</param>
public sealed record TugAgain(string Place, ValueList<string> Conductors)
{
    /// <summary>What to do, in a sentence.</summary>
    public string Sentence => $"At {Place}, tug again: {string.Join(", ", Conductors)}.";
}
