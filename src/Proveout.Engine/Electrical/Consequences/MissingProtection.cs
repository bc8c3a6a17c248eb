using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Hidden danger: with the mistakes in place, would one insulation fault leave metal live?</summary>
internal static class MissingProtection
{
    // A dead short from line to metal.
    private const double FaultOhms = 0.01;

    /// <summary>Adds what it finds, for metal whose protective path the mistakes alter.</summary>
    public static void Look(LiveModel model, LiveSights sights, IReadOnlyList<ElementChange> changes, LiveStage? stage, List<LiveFinding> findings)
    {
        if (model.Mains is null || !changes.Any(change => TouchesProtective(model, change)))
            return;
        var state = model.States.First(candidate => candidate.Kind != ControlStateKind.Off);
        var poor = changes.Any(change => change is AddInSeries or Replace);
        var paths = new ProtectivePaths(model, changes, stage);
        foreach (var exposed in sights.Exposed.Where(exposed => exposed.LineNode >= 0 && (poor || !paths.Reaches(exposed.Node))))
            if (Fails(model, changes, stage, state, exposed) is { } faulty && Fails(model, [], stage, state, exposed) is null)
                findings.Add(new(
                    LiveFindingKind.ProtectionMissing, Severity.Shock, exposed.Name, faulty.Volts, TouchVoltages.LimitVolts, "V", state,
                    $"If insulation fails at {exposed.Name}, it stands at {LiveLook.Figure(faulty.Volts)} V against earth {faulty.Until}."));
    }

    private static (double Volts, string Until)? Fails(
        LiveModel model, IReadOnlyList<ElementChange> changes, LiveStage? stage, ControlState state, LiveExposed exposed)
    {
        var machine = new FaultyMachine(model, [.. changes, new Join(exposed.LineNode, exposed.Node, FaultOhms, FaultOhms)], stage);
        var last = machine.Solve(state);
        var (first, stays) = ((last.AtFirst ?? last).AcVolts(exposed.Node).Magnitude, last.AcVolts(exposed.Node).Magnitude);
        var seconds = last.Trips.Sum(trip => trip.Seconds);
        if (stays > TouchVoltages.LimitVolts)
            return (stays, "and nothing interrupts");
        return first > TouchVoltages.LimitVolts && seconds > TouchVoltages.LongestSeconds(model)
            ? (first, $"for up to {LiveLook.Figure(seconds)} s")
            : null;
    }

    private static bool TouchesProtective(LiveModel model, ElementChange change) => change switch
    {
        Cut cut => IsProtective(model, cut.Element),
        AddInSeries added => IsProtective(model, added.Element),
        Replace replace => IsProtective(model, replace.Element),
        _ => false,
    };

    // 0 V that is bonded on purpose hangs on the protective conductor too, by its green-yellow conductor.
    private static bool IsProtective(LiveModel model, int element)
    {
        var branch = model.Circuit.Branches[element];
        return model.Context.ClassOf(branch.A) == NetClass.ProtectiveEarth || model.Context.ClassOf(branch.B) == NetClass.ProtectiveEarth
            || model.Context.Design.Conductors.Any(conductor =>
                conductor.Id == branch.Subject && conductor.Colour == Machine.ConductorColour.GreenYellow);
    }
}
