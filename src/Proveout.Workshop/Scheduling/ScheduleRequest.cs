using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Workshop;

/// <summary>What schedules are made of.</summary>
/// <param name="Design">The machine.</param>
/// <param name="ReelLength">Length of wire on a reel, or in a bought ring.</param>
/// <param name="Steps">The order of work.</param>
/// <param name="ReadyChecks">For each step of work, the checks that become ready with it.</param>
public sealed record ScheduleRequest(
    MachineDesign Design, Length ReelLength, IReadOnlyList<WorkStep> Steps, IReadOnlyList<IReadOnlyList<Check>> ReadyChecks);
