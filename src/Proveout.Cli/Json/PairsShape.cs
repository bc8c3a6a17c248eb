using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What the plan does against two mistakes made together.</summary>
internal sealed record PairsShape(
    long Simulated, long Caught, long Masked, long LeftToTheEye, string Summary, IReadOnlyList<string> AddedChecks, IReadOnlyList<PairGroupShape> Groups)
{
    public static PairsShape Of(PairsView pairs) => new(
        pairs.Simulated,
        pairs.Caught,
        pairs.Masked,
        pairs.LeftToTheEye,
        pairs.Summary,
        pairs.AddedChecks,
        [.. pairs.Groups.Select(group => new PairGroupShape(group.Kinds, SeverityWords.Of(group.Severity), group.Consequence, SeverityWords.Of(group.AloneSeverity), group.Reading, group.OtherEvidence, group.Example, group.Count))]);
}

/// <summary>Masked pairs alike.</summary>
internal sealed record PairGroupShape(string Kinds, string Severity, string Consequence, string AloneSeverity, string Reading, IReadOnlyList<string> OtherEvidence, string Example, int Count);
