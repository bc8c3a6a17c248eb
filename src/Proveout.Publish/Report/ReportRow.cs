namespace Proveout.Publish.Report;

/// <summary>One check of a report.</summary>
/// <param name="Number">Place in the order, from 1.</param>
/// <param name="SetUp">Title of the state in which it is done; checks with the same one stand together.</param>
/// <param name="Title">A few words.</param>
/// <param name="Between">What lies between the two leads, in words; empty when there is nothing to say.</param>
/// <param name="Expectation">What it should read, in words and units.</param>
/// <param name="Reading">What it read, with its unit; empty when it was not done.</param>
/// <param name="Verdict">What became of it.</param>
/// <param name="Note">Why it was left out, or anything else to say; may be empty.</param>
/// <param name="Person">Who did it; empty when nobody has.</param>
/// <param name="When">When, in universal time; null when it was not done.</param>
public sealed record ReportRow(
    int Number,
    string SetUp,
    string Title,
    string Between,
    string Expectation,
    string Reading,
    ReportVerdict Verdict,
    string Note,
    string Person,
    DateTimeOffset? When);
