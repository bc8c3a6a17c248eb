namespace Proveout.Engine.Machine;

/// <summary>What a change is about, the most dangerous first.</summary>
public enum ChangeRank
{
    /// <summary>Protective conductors and bonding.</summary>
    Protective,

    /// <summary>Line and neutral.</summary>
    Mains,

    /// <summary>Both poles of extra-low-voltage supplies.</summary>
    Supply,

    /// <summary>Everything else.</summary>
    Other,
}
