namespace Proveout.Workshop;

/// <summary>An opening of a bay, and what flows through it with new filters.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Fan">Designation of its fan; empty when it has none.</param>
/// <param name="LeastIn">Least flow into the bay in m³/h; negative when air leaves.</param>
/// <param name="MostIn">Most flow into the bay in m³/h.</param>
public sealed record BayWay(string Name, string Fan, double LeastIn, double MostIn);
