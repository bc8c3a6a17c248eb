using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Axes that belts do not let move but together: the sum of factor times movement is nothing.</summary>
/// <param name="Shares">The axes with their factors; a single one is locked.</param>
public sealed record AxisLock(ValueList<AxisShare> Shares);
