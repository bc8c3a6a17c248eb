namespace Proveout.Workshop;

/// <summary>A measurement in the record of a build.</summary>
/// <param name="Sequence">Entry number.</param>
/// <param name="When">When, in universal time.</param>
/// <param name="Person">Who measured.</param>
/// <param name="Analysis">Which analysis.</param>
/// <param name="Title">What was measured.</param>
/// <param name="Summary">What came of it.</param>
/// <param name="Results">The figures that matter.</param>
/// <param name="Typed">What was typed, by field.</param>
/// <param name="FileName">Name of the data file; empty when there is none.</param>
/// <param name="FileSha256">Hash that names the data file; empty when there is none.</param>
public sealed record KeptMeasurement(
    long Sequence,
    DateTimeOffset When,
    string Person,
    string Analysis,
    string Title,
    string Summary,
    IReadOnlyList<KeptFigure> Results,
    IReadOnlyDictionary<string, string> Typed,
    string FileName,
    string FileSha256);
