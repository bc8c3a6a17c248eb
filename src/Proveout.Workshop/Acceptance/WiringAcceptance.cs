using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Stops, earth, joints that carry most, fans.</summary>
internal sealed class WiringAcceptance : IAcceptanceSource
{
    private const string Practice = "Common practice.";
    private const double WarmAmperes = 1;
    private const int MostNamed = 8;

    public IEnumerable<AcceptanceItem> Of(AcceptanceCase machine)
    {
        foreach (var stop in StopActions.Of(machine.Live))
            yield return new(
                PlainNames.Of($"stop {stop.Part} {stop.Position}"), AcceptancePhase.Protection, $"{stop.Part} {stop.Position}",
                stop.StaysOff.Count > 0
                    ? $"With everything at work, operate {stop.Part} once, then release it."
                    : $"With everything at work, operate {stop.Part} once; command everything off before you release it, for nothing else keeps it off.",
                $"{string.Join(", ", stop.Stops)} stop at once{StayOff(stop)}.",
                "Do not use the machine: its stop does not stop.", "IEC 60204-1 clauses 9.2.2 and 9.2.3.4.2, from memory.");
        if (machine.Design.Mains is not null)
            foreach (var item in Mains(machine.Design))
                yield return item;
        if (Warmest(machine.Live) is { Count: > 0 } warm)
            yield return new(
                "joints-warm", AcceptancePhase.Soak, "Joints that carry most",
                $"After an hour with everything at work pull the plug and keep it in sight. Open, touch nothing, and look at once with a contactless thermometer; without one, wait five minutes, prove dead, then feel: {string.Join("; ", warm)}.",
                "None is more than 20 K warmer than its neighbours; nothing smells or is discoloured.",
                "A poor joint: cut it off and make it anew.", Practice);
        if (machine.Design.Parts.Any(part => part.Type.ClassLetter == "G"))
            yield return new(
                "fans-dust", AcceptancePhase.EveryFiftyHours, "Fans and filters",
                $"Look at {string.Join(", ", machine.Design.Parts.Where(part => part.Type.ClassLetter == "G").Select(part => part.Designation))}: dust, noise, cable away from blades.",
                "Each starts by itself when commanded at its least output, and is clean.",
                "Clean or replace; never run without.", Practice);
        yield return new(
            "screws-first", AcceptancePhase.AfterTenHours, "Screw terminals after the first heat",
            "Go once over the list of fastening torques, with the driver set to each.",
            "None turns by more than an eighth.",
            "Fasten, mark, and look again after the next ten hours.", Practice);
        yield return new(
            "moving-leads", AcceptancePhase.EveryFiftyHours, "Leads that move",
            "Bend each lead that moves along its whole way, and look at its ends and ties.",
            "No flattened, bright or brittle spot; ties hold.",
            "Replace the lead, and find what rubbed.", Practice);
    }

    private static string StayOff(StopAction stop) =>
        stop.StaysOff.Count == 0 ? ""
        : $"{(stop.StaysOff.Count == stop.Stops.Count ? " and" : $"; {string.Join(", ", stop.StaysOff)}")} stay off when it is released, until started again";

    private static IEnumerable<AcceptanceItem> Mains(MachineDesign design)
    {
        yield return new(
            "residual-button", AcceptancePhase.Protection, "Residual-current device",
            "Press the test button of the device that guards the outlet, with the machine on and at rest.",
            "It trips at once, and the machine does not start by itself when power returns.",
            "Have the outlet seen to by a licensed electrician before the machine is used.", "IEC 61008-1 (test device), from memory.");
        yield return new(
            "earth-again", AcceptancePhase.Yearly, "Protective earth",
            $"The dead checks from the inlet's earth pin to every metal part{(design.Parts.Any(part => part.Type.ExposedConductivePart) ? $": {string.Join(", ", design.Parts.Where(part => part.Type.ExposedConductivePart).Select(part => part.Designation))}" : "")}.",
            "Each at most 20 milliohm more than in the first record.",
            "Clean and fasten the joint; paint and oxide do not carry.", "IEC 60204-1 clause 18.2; the 20 milliohm are common practice.");
        yield return new(
            "insulation-again", AcceptancePhase.Yearly, "Insulation",
            "500 V direct between live conductors together and earth, electronics bridged or apart, by a competent person.",
            "At least 1 megohm.",
            "Find the damp heater or the worn lead before the machine is used again.", "IEC 60204-1 clause 18.3.");
    }

    private static List<string> Warmest(LiveModel model)
    {
        var everything = model.States.LastOrDefault(state => state.Kind == ControlStateKind.AllOutputs);
        return everything is null
            ? []
            :
            [
                .. ConductorCurrents.Of(model, everything)
                    .Where(conductor => conductor.Amperes >= WarmAmperes)
                    .OrderByDescending(conductor => conductor.Amperes)
                    .DistinctBy(conductor => conductor.To)
                    .Take(MostNamed)
                    .Select(conductor => string.Create(CultureInfo.InvariantCulture, $"{conductor.From} to {conductor.To} ({conductor.Amperes:0.0} A)")),
            ];
    }
}
