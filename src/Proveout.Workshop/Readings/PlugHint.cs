using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Says when a reading that fails would be right with other plugs in or out: the plug is then the first suspect, not the wiring.</summary>
internal static class PlugHint
{
    /// <summary>A sentence, or an empty one when the reading fits no other state of the plugs.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="check">The check that failed.</param>
    /// <param name="value">What was read.</param>
    public static string Of(LoadedMachine machine, Check check, double value)
    {
        if (check.Kind != MeterMode.Resistance.Kind || check.Points is not [var red, var black])
            return "";
        var wiring = WiringNetworkBuilder.Build(machine.Design);
        string[] fitting =
        [
            .. from state in PlugStates.About(machine.Design, TerminalOf(red), TerminalOf(black))
               where state.Text.Id != check.SetUp
               let reading = new ExpectedReadings(wiring, state.State).Between(red, black).RedOnFirst
               where reading.Ohms.Contains(value)
               select $"\"{state.Text.Title}\" ({reading.OhmsInWords})",
        ];
        return fitting.Length == 0 ? "" : $"It would be right in another state of the plugs: {string.Join(", or ", fitting)}. Look what is plugged before you look for a mistake.";
    }

    private static TerminalReference TerminalOf(CheckPoint point) => new(point.Subject, point.Place);
}
