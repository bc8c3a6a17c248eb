namespace Proveout.Engine.Heat;

/// <summary>A mistake with the air of a bay, and the bay that it leaves.</summary>
/// <param name="Id">Identifier, lower case with hyphens; with the opening's name behind a colon.</param>
/// <param name="Kind">Kind of mistake.</param>
/// <param name="Sentence">What is wrong, in a sentence.</param>
/// <param name="Prior">Probability that a careful builder makes it, common practice.</param>
/// <param name="OtherEvidence">What else shows it.</param>
/// <param name="Subjects">What it concerns.</param>
/// <param name="Left">The bay that it leaves.</param>
internal sealed record AirMistake(string Id, string Kind, string Sentence, double Prior, string OtherEvidence, string[] Subjects, BayAir Left)
{
    /// <summary>True when a fan burns out by it, whatever the air does.</summary>
    public bool BurnsFan { get; init; }

    /// <summary>True when a person can touch mains by it, whatever the air does.</summary>
    public bool BaresMains { get; init; }
}
