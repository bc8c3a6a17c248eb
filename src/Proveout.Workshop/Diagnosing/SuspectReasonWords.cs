using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Puts the reasons for suspects into sentences.</summary>
/// <param name="dictionary">What every check shows under every fault.</param>
/// <param name="reasons">Finds the reasons.</param>
internal sealed class SuspectReasonWords(FaultDictionary dictionary, WhySuspected reasons)
{
    private const int MostReadings = 3;

    /// <summary>The suspect with why it is one and what would rule it out.</summary>
    /// <param name="suspect">The suspect.</param>
    /// <param name="alike">The hypotheses that it stands for: no check tells them apart.</param>
    public Suspect Add(Suspect suspect, IReadOnlyList<Hypothesis> alike)
    {
        if (alike[0].Faults.Count == 0)
            return suspect;
        var found = reasons.Of(alike[0].Faults, [.. alike.Select(hypothesis => hypothesis.Faults)]);
        return suspect with
        {
            Why = [.. found.Fitting.Take(MostReadings).Select(Fits)],
            RuledOutBy = found.RuledOutBy is { } ruling ? RulesOut(ruling) : null,
        };
    }

    private string Fits(FittingReading reading)
    {
        var check = dictionary.Checks[reading.Check];
        return $"{check.Title}: {ShownWords.Of(check, reading.Value)} is what this gives ({ShownWords.Of(check, reading.Shown)}). "
            + $"A sound machine shows {ShownWords.Of(check, check.Expectation)}.";
    }

    private string RulesOut(RulingCheck ruling)
    {
        var check = dictionary.Checks[ruling.Check];
        return $"{check.Title}: if it shows {ShownWords.Of(check, ruling.Otherwise)}, it is not this. With this it shows {ShownWords.Of(check, ruling.Shown)}.";
    }
}
