using System.Collections.Frozen;

namespace Proveout.Engine.Electrical;

/// <summary>Which plugs are apart and where the controls stand.</summary>
public sealed class MachineState
{
    private readonly FrozenDictionary<(string Part, string Control), string> _positions;
    private readonly FrozenSet<(string Part, string Connector)> _pulled;

    /// <summary>Makes a state.</summary>
    /// <param name="plugsApart">True when every pluggable connector is apart; false when every one is mated.</param>
    /// <param name="positions">Controls that do not stand in their rest position.</param>
    public MachineState(bool plugsApart, IEnumerable<(string Part, string Control, string Position)> positions)
        : this(plugsApart, [], positions)
    {
    }

    private MachineState(
        bool plugsApart,
        IEnumerable<(string Part, string Connector)> pulled,
        IEnumerable<(string Part, string Control, string Position)> positions)
    {
        PlugsApart = plugsApart;
        _pulled = pulled.ToFrozenSet();
        _positions = positions.ToFrozenDictionary(item => (item.Part, item.Control), item => item.Position);
    }

    /// <summary>True when every pluggable connector is apart; false when none is, or only some.</summary>
    public bool PlugsApart { get; }

    /// <summary>A state in which only some plugs are pulled, with every control at rest.</summary>
    /// <param name="pulled">The connectors that are apart.</param>
    public static MachineState WithPulled(params IEnumerable<(string Part, string Connector)> pulled) => new(false, pulled, []);

    /// <summary>True when some plugs, but not all, are pulled.</summary>
    public bool AnyPulled => _pulled.Count > 0;

    /// <summary>True when this pluggable connector is apart.</summary>
    public bool IsPulled(string part, string connector) => PlugsApart || _pulled.Contains((part, connector));

    /// <summary>The position of a control that is not at rest, or null.</summary>
    public string? PositionOf(string part, string control) => _positions.GetValueOrDefault((part, control));
}
