namespace Proveout.Engine.Faults;

/// <summary>What a check may show when all faults of a set are made.</summary>
internal static class FaultsTogether
{
    /// <summary>The interval; anything where several of them change the check and nothing simulates them.</summary>
    public static ReadingInterval Shown(FaultDictionary dictionary, IReadOnlyList<int> faults, int check, IFaultSimulator? simulator)
    {
        ReadingInterval? only = null;
        foreach (var fault in faults)
            if (dictionary.ResponseOf(fault).At(check) is { } shown)
            {
                if (only is not null)
                    return simulator?.Shown([.. faults], check) ?? ReadingInterval.Anything;
                only = shown;
            }

        return only ?? dictionary.Checks[check].Expectation;
    }
}
