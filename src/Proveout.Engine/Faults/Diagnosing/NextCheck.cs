namespace Proveout.Engine.Faults;

/// <summary>Chooses the check that is worth most now.</summary>
/// <remarks>
/// Worth is expected information a minute: the mutual information of hypothesis and reading (Shannon 1948; for choosing tests de Kleer and
/// Williams, Artificial Intelligence 32 (1987) 97-130), with readings even over the interval of each hypothesis. Hypotheses that may show
/// anything at a check, because two of their faults change it, count as telling nothing there.
/// </remarks>
public static class NextCheck
{
    // Less than this is not worth touching the machine for.
    private const double LeastBits = 1e-4;

    /// <summary>The check worth most; null when no allowed check tells any two hypotheses apart.</summary>
    /// <param name="dictionary">What every check shows under every fault.</param>
    /// <param name="posterior">What is believed after the readings so far; of none too.</param>
    /// <param name="done">Identifiers of checks already read or left out.</param>
    /// <param name="position">Where the bench stands.</param>
    /// <param name="allowed">Which checks may be proposed, such as dead ones only; all when null.</param>
    public static CheckWorth? Of(
        FaultDictionary dictionary, Posterior posterior, IReadOnlySet<string> done, BenchPosition position, Func<Check, bool>? allowed = null) =>
        Worths(dictionary, posterior, done, position, allowed).MaxBy(worth => worth.BitsAMinute);

    /// <summary>The check worth most of the first phase in which any check is worth something: dead checks before live ones.</summary>
    /// <param name="dictionary">What every check shows under every fault.</param>
    /// <param name="posterior">What is believed after the readings so far; of none too.</param>
    /// <param name="done">Identifiers of checks already read or left out.</param>
    /// <param name="position">Where the bench stands.</param>
    /// <param name="phaseOf">Phase of a check: lower ones come first, whatever they cost.</param>
    public static CheckWorth? InPhases(
        FaultDictionary dictionary, Posterior posterior, IReadOnlySet<string> done, BenchPosition position, Func<Check, int> phaseOf) =>
        Worths(dictionary, posterior, done, position, null)
            .OrderBy(worth => phaseOf(dictionary.Checks[worth.Check]))
            .ThenByDescending(worth => worth.BitsAMinute)
            .FirstOrDefault();

    private static List<CheckWorth> Worths(
        FaultDictionary dictionary, Posterior posterior, IReadOnlySet<string> done, BenchPosition position, Func<Check, bool>? allowed)
    {
        var beliefs = new CheckBeliefs(dictionary, posterior);
        var scratch = new double[beliefs.ScratchSize];
        var found = new List<CheckWorth>();
        foreach (var check in beliefs.Checks)
        {
            var about = dictionary.Checks[check];
            if (done.Contains(about.Id) || about.Expectation == ReadingInterval.Anything || allowed?.Invoke(about) == false)
                continue;
            var bits = beliefs.Information(check, scratch);
            if (bits > LeastBits)
                found.Add(new(check, bits, position.SecondsOf(dictionary, check)));
        }

        return found;
    }
}
