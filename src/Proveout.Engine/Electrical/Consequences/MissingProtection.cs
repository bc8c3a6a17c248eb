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
        // With every output on, the line of every load is live.
        var state = model.States.FirstOrDefault(candidate => candidate.Kind == ControlStateKind.AllOutputs)
            ?? model.States.First(candidate => candidate.Kind != ControlStateKind.Off);
        var poor = changes.Any(change => change is AddInSeries or Replace);
        var paths = new ProtectivePaths(model, changes, stage);
        foreach (var exposed in sights.Exposed.Where(exposed => exposed.LineNode >= 0 && (poor || !paths.Reaches(exposed.Node))))
        {
            var insulation = new Join(exposed.LineNode, exposed.Node, FaultOhms, FaultOhms);
            if (Fails(model, [.. changes, insulation], stage, state, exposed) is { } faulty)
            {
                if (sights.IsGuarded(exposed, stage, () => Fails(model, [insulation], stage, state, exposed) is null))
                    Add(findings, exposed, state, faulty, "insulation fails at");
            }
            else if (!paths.Reaches(exposed.Node) && Fails(model, [.. changes, .. OpenNeutral(model)], stage, state, exposed) is { } live)
            {
                Add(findings, exposed, state, live, "the neutral opens, which is all that holds");
            }
        }
    }

    private static void Add(List<LiveFinding> findings, LiveExposed exposed, ControlState state, (double Volts, string Until) faulty, string what) =>
        findings.Add(new(
            LiveFindingKind.ProtectionMissing, Severity.Shock, exposed.Name, faulty.Volts, TouchVoltages.LimitVolts, "V", state,
            $"If {what} {exposed.Name}, it stands at {LiveLook.Figure(faulty.Volts)} V against earth {faulty.Until}."));

    private static IEnumerable<ElementChange> OpenNeutral(LiveModel model) => model.Circuit.Branches
        .Where(branch => branch is { Subject: MainsBranches.Subject, Name: MainsBranches.Neutral })
        .Select(branch => new Cut(branch.Index));

    private static (double Volts, string Until)? Fails(
        LiveModel model, IReadOnlyList<ElementChange> changes, LiveStage? stage, ControlState state, LiveExposed exposed)
    {
        var last = new FaultyMachine(model, changes, stage).Solve(state);
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

    /// <summary>True for an element of a protective path; 0 V that is bonded on purpose hangs on the protective conductor too, by its green-yellow conductor.</summary>
    public static bool IsProtective(LiveModel model, int element)
    {
        var branch = model.Circuit.Branches[element];
        return model.Context.ClassOf(branch.A) == NetClass.ProtectiveEarth || model.Context.ClassOf(branch.B) == NetClass.ProtectiveEarth
            || model.Context.Design.Conductors.Any(conductor =>
                conductor.Id == branch.Subject && conductor.Colour == Machine.ConductorColour.GreenYellow);
    }
}
