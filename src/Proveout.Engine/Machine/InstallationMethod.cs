namespace Proveout.Engine.Machine;

/// <summary>How conductors lie, for the heat that they can give off: IEC 60204-1 annex D, IEC 60364-5-52.</summary>
public enum InstallationMethod
{
    /// <summary>Single cores in conduit or trunking.</summary>
    B1,

    /// <summary>Cables in conduit or trunking.</summary>
    B2,

    /// <summary>On a wall or plate.</summary>
    C,

    /// <summary>In free air or on an open tray.</summary>
    E,
}
