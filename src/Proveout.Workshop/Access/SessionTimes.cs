namespace Proveout.Workshop;

/// <summary>How long a session lasts; docs/security.md says why.</summary>
public static class SessionTimes
{
    /// <summary>Ends a session that nobody uses. Longer than a soak or a meal, so that a bench is not signed out in the middle of a check.</summary>
    public static readonly TimeSpan Idle = TimeSpan.FromHours(2);

    /// <summary>Ends every session: a long day at the bench.</summary>
    public static readonly TimeSpan Whole = TimeSpan.FromHours(12);

    /// <summary>How exactly the last use is kept, so that a look at a page does not write a file each time.</summary>
    public static readonly TimeSpan UsedStep = TimeSpan.FromMinutes(1);

    /// <summary>How long a join code opens the door.</summary>
    public static readonly TimeSpan JoinCode = TimeSpan.FromMinutes(10);
}
