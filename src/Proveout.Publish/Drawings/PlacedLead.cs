using Proveout.Engine.Faults;

namespace Proveout.Publish.Drawings;

/// <summary>A lead and the point that it goes to.</summary>
internal sealed record PlacedLead(Lead Lead, CheckPoint Point);
