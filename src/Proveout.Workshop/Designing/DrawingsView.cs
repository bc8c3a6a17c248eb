namespace Proveout.Workshop;

/// <summary>The drawings of a machine.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Sheets">Name and title of every sheet.</param>
public sealed record DrawingsView(MachineSummary Machine, IReadOnlyList<(string Name, string Title)> Sheets);
