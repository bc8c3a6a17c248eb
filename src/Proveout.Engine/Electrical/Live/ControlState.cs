using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>One state of what people and controllers command while the machine is plugged in.</summary>
/// <param name="Name">In plain words, such as <c>all outputs on</c>.</param>
/// <param name="Kind">What sort of state it is.</param>
/// <param name="Positions">Controls that are not at rest.</param>
/// <param name="Commands">Commands given, by part and name.</param>
/// <param name="After">The state just before, when relays remember it; null when it does not matter.</param>
public sealed record ControlState(
    string Name,
    ControlStateKind Kind,
    ValueList<(string Part, string Control, string Position)> Positions,
    ValueList<(string Part, string Command)> Commands,
    ControlState? After)
{
    /// <summary>The state as a sentence says it after "with".</summary>
    public string Words => Kind == ControlStateKind.Idle ? "nothing commanded" : Name;

    /// <summary>By its name alone: states are looked up all the time, and those of one machine have different names.</summary>
    public override int GetHashCode() => Name.GetHashCode(StringComparison.Ordinal);
}
