namespace Proveout.Workshop;

/// <summary>What builds teach of one kind of mistake.</summary>
/// <param name="Kind">Kind of fault.</param>
/// <param name="Found">How many were found.</param>
/// <param name="Expected">How many would have been expected by the assumed rates, among those that were looked for.</param>
/// <param name="Factor">What the assumed rate is multiplied by from now on.</param>
public sealed record LearnedKind(string Kind, int Found, double Expected, double Factor);
