using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>The state in which settings are tried.</summary>
internal static class SettingSetUps
{
    /// <summary>Identifier of the state.</summary>
    public const string Id = "settings-tried";

    /// <summary>The state for a machine.</summary>
    public static SetUp Live(MachineDesign design) => new(
        Id,
        "Energised, settings entered, nothing running",
        ["All dead checks and the stages of energising have passed.", "Axes in the middle of their travel; heaters cold; nothing in the way of what may move."],
        [
            "Things start by themselves now, and perhaps the wrong ones: hands, hair and cables out of the machine, a hand at its stop or plug.",
            .. design.Mains is null ? Array.Empty<string>() : ["Mains is on: every cover stays on. Local codes and licensed practice come first."],
        ],
        120)
    {
        Phase = Phase.InUse,
    };
}
