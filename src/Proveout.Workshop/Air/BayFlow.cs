namespace Proveout.Workshop;

/// <summary>What flows through a bay, in m³/h.</summary>
/// <param name="NewLeast">With new filters, at least.</param>
/// <param name="NewMost">With new filters, at most.</param>
/// <param name="LoadedLeast">With filters that are to be changed, at least.</param>
public sealed record BayFlow(double NewLeast, double NewMost, double LoadedLeast);
