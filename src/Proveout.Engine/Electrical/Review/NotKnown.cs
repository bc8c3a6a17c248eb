namespace Proveout.Engine.Electrical;

/// <summary>Says in one finding what a rule could not review.</summary>
internal static class NotKnown
{
    private const int MostNamed = 6;

    /// <summary>One finding for everything that does not say what a rule asks; none when all do.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="subjects">What does not say it.</param>
    /// <param name="what">What is not said, such as <c>how the copper is made up</c>.</param>
    /// <param name="key">The key of the machine file that says it.</param>
    public static IEnumerable<Finding> Of(IReviewRule rule, IEnumerable<string> subjects, string what, string key)
    {
        string[] all = [.. subjects.Distinct()];
        if (all.Length > 0)
            yield return new Finding(
                rule.Id,
                FindingSeverity.NotKnown,
                [.. all],
                $"The design does not say {what} of {(all.Length <= MostNamed ? PathWords.List(all) : $"{all.Length} things, the first being {all[0]}")}: that was not reviewed.",
                $"Give `{key}` in the machine file.",
                "how the review works");
    }
}
