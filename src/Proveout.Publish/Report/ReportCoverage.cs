namespace Proveout.Publish.Report;

/// <summary>Coverage of one kind of fault.</summary>
/// <param name="Kind">Kind of fault, in plain words.</param>
/// <param name="Faults">How many were simulated; not negative.</param>
/// <param name="Caught">How many of them the checks surely catch; at most <paramref name="Faults"/>.</param>
public sealed record ReportCoverage(string Kind, int Faults, int Caught);
