namespace Proveout.Workshop;

/// <summary>What can be wrong with a thing, as people say it.</summary>
internal enum Trouble
{
    /// <summary>It does nothing.</summary>
    Dead,

    /// <summary>It does something when it should not.</summary>
    AlwaysOn,

    /// <summary>It hums or twitches.</summary>
    Hums,

    /// <summary>It turns the other way.</summary>
    Backwards,

    /// <summary>A fuse or circuit-breaker goes.</summary>
    Trips,

    /// <summary>A residual-current device goes.</summary>
    Leaks,

    /// <summary>It tingles to the touch.</summary>
    Tingles,

    /// <summary>The emergency stop does not stop it.</summary>
    NoStop,

    /// <summary>It starts again by itself.</summary>
    Restarts,
}
