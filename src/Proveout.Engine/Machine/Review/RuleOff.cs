namespace Proveout.Engine.Machine;

/// <summary>A rule of the review that the builder switched off.</summary>
/// <param name="Rule">Identifier of the rule.</param>
/// <param name="Reason">Why; the review shows it.</param>
public sealed record RuleOff(string Rule, string Reason);
