namespace Proveout.Workshop;

/// <summary>What a change of the machine makes of a reading.</summary>
public enum CheckStanding
{
    /// <summary>A reading taken before the change says of the changed machine what it said of the earlier one.</summary>
    StillHolds,

    /// <summary>The check is to be done again.</summary>
    Repeat,

    /// <summary>The earlier machine had no such check.</summary>
    New,

    /// <summary>The changed machine has no such check.</summary>
    Gone,
}
