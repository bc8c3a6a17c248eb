using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>The room that a thing takes, as one stands before it.</summary>
/// <param name="Width">From left to right.</param>
/// <param name="Height">From bottom to top.</param>
/// <param name="Depth">Towards the one who looks; null when it does not matter.</param>
public readonly record struct Outline(Length Width, Length Height, Length? Depth = null);
