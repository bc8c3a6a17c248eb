namespace Proveout.Workshop;

/// <summary>When something is looked at on the way into use, and afterwards.</summary>
public enum AcceptancePhase
{
    /// <summary>While the machine runs for the first time.</summary>
    FirstRun,

    /// <summary>Each protection made to act once.</summary>
    Protection,

    /// <summary>An hour or two at the most that it is used for.</summary>
    Soak,

    /// <summary>After the first hour at work.</summary>
    AfterAnHour,

    /// <summary>After ten hours.</summary>
    AfterTenHours,

    /// <summary>After fifty hours, and every fifty from then on.</summary>
    EveryFiftyHours,

    /// <summary>Every 250 hours, or once a year if that comes first.</summary>
    Yearly,
}
