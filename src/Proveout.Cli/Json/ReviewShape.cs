using Proveout.Engine.Electrical;

namespace Proveout.Cli;

/// <summary>What the review of a design found, worst first.</summary>
internal sealed record ReviewShape(string Format, MachineShape Machine, IReadOnlyList<FindingShape> Findings);

/// <summary>One finding.</summary>
internal sealed record FindingShape(
    string Rule, string Severity, IReadOnlyList<string> Subjects, string Sentence, IReadOnlyList<FigureShape> Numbers, string Fix, string Source)
{
    public static FindingShape Of(Finding finding) => new(
        finding.Rule,
        ShapeWords.Of(finding.Severity),
        [.. finding.Subjects],
        finding.Sentence,
        [.. finding.Numbers.Select(number => new FigureShape(number.Name, number.Value, number.Unit))],
        finding.Fix,
        finding.Source);
}

/// <summary>A figure that a finding rests on.</summary>
internal sealed record FigureShape(string Name, double Value, string Unit);
