using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>Belts with the axes in one place, as one picture of a film.</summary>
/// <param name="Words">Where the axis stands.</param>
/// <param name="Belts">The belts.</param>
/// <param name="Marks">Pulleys, idlers and anchors.</param>
public sealed record BeltFrame(string Words, ValueList<DrawnBelt> Belts, ValueList<BeltMark> Marks);
