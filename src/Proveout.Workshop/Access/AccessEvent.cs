namespace Proveout.Workshop;

/// <summary>What can be done to a second factor.</summary>
public enum AccessEvent
{
    /// <summary>The person put it on.</summary>
    PutOn,

    /// <summary>The person took it off.</summary>
    TakenOff,

    /// <summary>Somebody at the bench's own terminal took it off.</summary>
    TakenOffAtBench,

    /// <summary>A code on paper was used instead of one of the authenticator.</summary>
    RecoveryUsed,

    /// <summary>Somebody who has the password or a join code typed wrong codes until no more were taken.</summary>
    Guessed,

    /// <summary>The person made new codes on paper.</summary>
    RecoveryMade,
}
