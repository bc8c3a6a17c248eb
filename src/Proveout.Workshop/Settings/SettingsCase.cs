using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>What settings follow from.</summary>
/// <param name="Design">The machine.</param>
/// <param name="Outputs">What its controllers' outputs drive.</param>
/// <param name="Inputs">What their inputs read.</param>
/// <param name="Heat">What is predicted of its heat.</param>
/// <param name="Motors">What its motors move.</param>
internal sealed record SettingsCase(MachineDesign Design, IReadOnlyList<OutputAssignment> Outputs, IReadOnlyList<InputAssignment> Inputs, HeatView Heat, IReadOnlyList<MotorRow> Motors);
