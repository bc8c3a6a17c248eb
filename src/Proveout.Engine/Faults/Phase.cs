namespace Proveout.Engine.Faults;

/// <summary>What is energised while a check is done.</summary>
public enum Phase
{
    /// <summary>Everything is isolated and proved dead.</summary>
    Dead,

    /// <summary>Measured with a meter while supplies are on.</summary>
    Live,

    /// <summary>Seen, heard or felt in use, without an instrument.</summary>
    InUse,
}
