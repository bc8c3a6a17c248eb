namespace Proveout.Workshop;

/// <summary>What was done to a second factor, in words.</summary>
public static class AccessEventWords
{
    /// <summary>The words.</summary>
    public static string Of(AccessEvent what) => what switch
    {
        AccessEvent.PutOn => "put on",
        AccessEvent.TakenOff => "taken off by its owner",
        AccessEvent.TakenOffAtBench => "taken off on the bench's own computer",
        AccessEvent.RecoveryUsed => "a code on paper was used",
        AccessEvent.Guessed => $"{SecondFactor.MostMisses} wrong codes with the right password or a join code: codes of the authenticator are not taken before a code on paper was used",
        _ => "new codes on paper were made",
    };
}
