namespace Proveout.Engine.Faults;

/// <summary>The hypothesis that a mistake was made which no rule generates.</summary>
/// <remarks>
/// It changes an unknown share of the checks, a few as a rule: Beta(1, 19), which is 5 % in the mean; a changed check may show anything.
/// Integrated over the share, k readings off among n weigh B(1 + k, 19 + n - k) / B(1, 19) (beta-binomial; Gelman et al., Bayesian Data
/// Analysis, 3rd edition, 2013, section 2.4 and appendix A).
/// </remarks>
internal static class UnknownMistake
{
    private const double Unchanged = 19;

    /// <summary>Natural logarithm of prior odds times likelihood.</summary>
    public static double LogWeight(Evidence evidence)
    {
        var off = 0;
        var weight = Math.Log(evidence.Rates.Unknown / (1 - evidence.Rates.Unknown));
        foreach (var item in evidence.Items)
        {
            weight += item.IsOff ? item.LogAnything : item.LogLikelihood(item.Sound);
            off += item.IsOff ? 1 : 0;
        }

        weight += Math.Log(Unchanged);
        for (var factor = 1; factor <= off; factor++)
            weight += Math.Log(factor);
        for (var factor = 0; factor <= off; factor++)
            weight -= Math.Log(Unchanged + evidence.Items.Count - off + factor);
        return weight;
    }
}
