using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Cautions and instructions of stages.</summary>
/// <remarks>Cautions after EN 50110-1 clause 6.3 (working live: competent person, insulated tools, no loose metal); common practice.</remarks>
internal static class StageWords
{
    /// <summary>What can hurt.</summary>
    public static ValueList<string> Cautions(bool mains) => mains
        ?
        [
            "MAINS IS ON in this stage. Only a competent person does it, where local codes allow; covers stay on wherever no probe has to reach.",
            "One person switches and says so. One hand, insulated probes with a finger guard, meter of category II or III for 300 V or more with fused leads.",
            "Touch no metal of the machine before volts from it to the protective conductor have been measured. A fire blanket and the main switch are within reach.",
            "Before any plug is pulled or mated: main switch off, mains plug out, prove dead, wait for capacitors.",
        ]
        :
        [
            "The supply is on in this stage. A short circuit of extra-low voltage burns: rings and watches off, no loose metal near the boards.",
            "Before any plug is pulled or mated: supply off, wait until its lamp is out.",
        ];

    /// <summary>What to do.</summary>
    public static ValueList<string> Instructions(StagePlan plan, bool isFirst)
    {
        var lines = new List<string>();
        if (isFirst)
            lines.AddRange(Listed("With everything off", Acts(plan.Apart, "pull", "take out or switch off")));
        lines.AddRange(Listed("With everything off", Acts(plan.Closed, "mate", "put in or switch on")));
        lines.AddRange(plan.States.Select(state => $"Then switch on, with {state.Words}."));
        lines.Add("Watch and smell for half a minute. Switch off at once when anything is warm, hums or smokes, or a device trips.");
        return [.. lines];
    }

    // A part is named once: whoever pulls its plugs stands before it.
    private static IEnumerable<string> Acts(IEnumerable<Gate> gates, string withPlug, string withFuse) =>
        from gate in gates
        group gate.Name by (gate.IsFuse, gate.Part) into one
        let names = one.ToArray()
        let act = one.Key.IsFuse ? withFuse : names.Length == 1 ? $"{withPlug} plug" : $"{withPlug} plugs"
        select $"{act} {PathWords.List(names)} of {one.Key.Part}";

    private static IEnumerable<string> Listed(string when, IEnumerable<string> acts)
    {
        string[] all = [.. acts];
        return all.Length == 0 ? [] : [$"{when}: {string.Join("; ", all)}."];
    }
}
