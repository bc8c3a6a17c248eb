namespace Proveout.Publish.Report;

/// <summary>A signature given in the journal.</summary>
/// <param name="Person">Who.</param>
/// <param name="Role">In which role.</param>
/// <param name="Statement">What is stated.</param>
/// <param name="When">When, in universal time.</param>
public sealed record ReportSignOff(string Person, string Role, string Statement, DateTimeOffset When);
