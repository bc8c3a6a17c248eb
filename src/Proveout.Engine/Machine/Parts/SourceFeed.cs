using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>What a source lives on.</summary>
/// <param name="A">Positive node of its input, or line.</param>
/// <param name="B">Negative node of its input, or neutral.</param>
/// <param name="From">Input voltage from which it delivers its own.</param>
public sealed record SourceFeed(string A, string B, ElectricPotential From);
