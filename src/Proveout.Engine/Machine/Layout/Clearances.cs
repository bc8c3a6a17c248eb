using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>Room that must stay free around a part, for air, tools or fingers, in the position its type is drawn in.</summary>
/// <param name="Above">Over its upper edge; null for none.</param>
/// <param name="Below">Under its lower edge; null for none.</param>
/// <param name="Left">Beside its left edge; null for none.</param>
/// <param name="Right">Beside its right edge; null for none.</param>
/// <param name="Front">Before its front; null for none.</param>
public sealed record Clearances(Length? Above, Length? Below, Length? Left, Length? Right, Length? Front);
