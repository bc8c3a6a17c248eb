using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>What settings follow from.</summary>
/// <param name="Design">The machine.</param>
/// <param name="Live">The machine energised.</param>
/// <param name="Heat">What is predicted of its heat.</param>
/// <param name="Motors">What its motors move.</param>
internal sealed record SettingsCase(MachineDesign Design, LiveModel Live, HeatView Heat, IReadOnlyList<MotorRow> Motors);
