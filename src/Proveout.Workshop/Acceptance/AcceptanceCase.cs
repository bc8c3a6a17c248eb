using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>What the list follows from.</summary>
/// <param name="Design">The machine.</param>
/// <param name="Live">The machine energised.</param>
/// <param name="Heat">What is predicted of its heat.</param>
/// <param name="Air">What is predicted of the air in its bays.</param>
internal sealed record AcceptanceCase(MachineDesign Design, LiveModel Live, HeatView Heat, AirView Air);
