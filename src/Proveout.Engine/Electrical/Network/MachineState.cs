using System.Collections.Frozen;

namespace Proveout.Engine.Electrical;

/// <summary>Which plugs are apart and where the controls stand.</summary>
public sealed class MachineState
{
    private readonly FrozenDictionary<(string Part, string Control), string> _positions;

    /// <summary>Makes a state.</summary>
    /// <param name="plugsApart">True when every pluggable connector is apart; false when every one is mated.</param>
    /// <param name="positions">Controls that do not stand in their rest position.</param>
    public MachineState(bool plugsApart, IEnumerable<(string Part, string Control, string Position)> positions)
    {
        PlugsApart = plugsApart;
        _positions = positions.ToFrozenDictionary(item => (item.Part, item.Control), item => item.Position);
    }

    /// <summary>True when every pluggable connector is apart; false when every one is mated.</summary>
    public bool PlugsApart { get; }

    /// <summary>The position of a control that is not at rest, or null.</summary>
    public string? PositionOf(string part, string control) => _positions.GetValueOrDefault((part, control));
}
