using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What the plan does against three dangerous mistakes made together.</summary>
internal sealed record TriplesShape(
    long Simulated,
    long Caught,
    long Masked,
    long Contradictory,
    string Summary,
    IReadOnlyList<IReadOnlyList<string>> Examples,
    IReadOnlyList<IReadOnlyList<string>> Instead)
{
    public static TriplesShape Of(TriplesView triples) =>
        new(
            triples.Simulated,
            triples.Caught,
            triples.Masked,
            triples.Contradictory,
            triples.Summary,
            [.. triples.Examples.Select(example => example.Mistakes)],
            [.. triples.Examples.Select(example => example.OtherEvidence)]);
}
