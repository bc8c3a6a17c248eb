using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Something that the design review found on paper, before anything is built.</summary>
/// <param name="Rule">Identifier of the rule, of our own, lower case with hyphens.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Subjects">Designations and identifiers concerned.</param>
/// <param name="Sentence">What was found, with the numbers.</param>
/// <param name="Fix">What to do.</param>
/// <param name="Source">Standard and clause, or <c>common practice</c>, or <c>from memory</c>.</param>
public sealed record Finding(
    string Rule,
    FindingSeverity Severity,
    ValueList<string> Subjects,
    string Sentence,
    string Fix,
    string Source)
{
    /// <summary>The numbers of the sentence with their units, for tables and programs.</summary>
    public ValueList<FindingNumber> Numbers { get; init; } = [];
}
