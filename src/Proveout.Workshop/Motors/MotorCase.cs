using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>The parts of an axis, as far as they are known.</summary>
internal sealed record MotorCase(
    AxisDrive Axis, CurrentSetting? Setting, StepperDrive? Drive, AxisLoad? Load, double? Acceleration, double? MetresPerSecond, BeltCase? Belt);

/// <summary>A carriage on its belt with the run to the motor at both ends of the travel, in m.</summary>
internal sealed record BeltCase(BeltDrivenMass Mass, double ShortestRun, double LongestRun);
