namespace Proveout.Engine.Machine;

/// <summary>Where the conductors of a route are held against pull.</summary>
public enum StrainRelief
{
    /// <summary>At both ends.</summary>
    Both,

    /// <summary>At the end that moves.</summary>
    Moving,

    /// <summary>At the end that stands still.</summary>
    Fixed,

    /// <summary>Nowhere.</summary>
    None,
}
