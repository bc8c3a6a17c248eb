using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A flat place that parts are mounted on: a plate, a panel, the floor of the electronics bay.</summary>
/// <param name="Name">Name, unique among surfaces and rails of the machine.</param>
/// <param name="Size">Width and height; the depth is the room in front of it, up to its door or cover.</param>
/// <param name="Slack">Spare length that a conductor keeps at each end on this surface, for service; null for none.</param>
/// <param name="Note">Anything a builder should know; empty when nothing is.</param>
public sealed record Surface(string Name, Outline Size, Length? Slack, string Note);
