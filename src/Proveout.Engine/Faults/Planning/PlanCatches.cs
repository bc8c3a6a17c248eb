namespace Proveout.Engine.Faults;

/// <summary>What some checks together catch.</summary>
/// <param name="Caught">Faults that one of them surely catches, by index, rising.</param>
/// <param name="Uncaught">The other faults, by index, rising.</param>
/// <param name="Worst">By index of the check, the worst that it surely catches.</param>
internal sealed record PlanCatches(IReadOnlyList<int> Caught, IReadOnlyList<int> Uncaught, Severity[] Worst)
{
    /// <summary>Goes through all faults once.</summary>
    public static PlanCatches Of(FaultDictionary dictionary, IEnumerable<int> checks)
    {
        var chosen = new bool[dictionary.Checks.Count];
        foreach (var check in checks)
            chosen[check] = true;
        var worst = new Severity[chosen.Length];
        List<int> caught = [];
        List<int> uncaught = [];
        for (var fault = 0; fault < dictionary.Faults.Count; fault++)
        {
            var isCaught = false;
            foreach (var check in dictionary.ChecksThatCatch(fault).Where(check => chosen[check]))
            {
                isCaught = true;
                worst[check] = (Severity)Math.Max((int)worst[check], (int)dictionary.Faults[fault].Severity);
            }

            (isCaught ? caught : uncaught).Add(fault);
        }

        return new PlanCatches(caught, uncaught, worst);
    }
}
