using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Which checks can be done after which step of the wiring work, so that a slip is found while the wire is still in hand.</summary>
/// <remarks>
/// A check is ready when every conductor on the metal that its leads touch is fitted, and when the machine with the conductors fitted so far may show
/// just what the finished machine may: both intervals are computed, and must be equal. One between spare terminals looks for a wire that strayed, so it
/// waits for the last step. Other ways of measuring than resistance wait for the last step.
/// </remarks>
public static class WorkChecks
{
    /// <summary>For each step, the checks that become ready with it.</summary>
    /// <param name="context">The finished machine.</param>
    /// <param name="steps">The steps, in order.</param>
    /// <param name="checks">Checks in the set-ups of <see cref="DeadSetUps"/>.</param>
    public static IReadOnlyList<IReadOnlyList<Check>> After(WiringContext context, IReadOnlyList<WorkStep> steps, IEnumerable<Check> checks)
    {
        var setUps = DeadSetUps.Of(context.Design).ToDictionary(setUp => setUp.Text.Id);
        var finished = new FittedMetal(context.Wiring);
        var waiting = checks.ToList();
        var ready = new List<IReadOnlyList<Check>>();
        var fitted = new HashSet<string>(StringComparer.Ordinal);
        foreach (var step in steps)
        {
            fitted.UnionWith(step.Conductors.Select(conductor => conductor.Id));
            var isLast = ready.Count == steps.Count - 1;
            var now = isLast ? [.. waiting] : ReadyOf(context.Design, setUps, finished, fitted, waiting);
            waiting.RemoveAll(now.Contains);
            ready.Add(now);
        }

        return ready;
    }

    private static List<Check> ReadyOf(
        MachineDesign design, Dictionary<string, ElectricalSetUp> setUps, FittedMetal finished, HashSet<string> fitted, List<Check> waiting)
    {
        var unfinished = WiringNetworkBuilder.Build(design with { Conductors = design.Conductors.Where(conductor => fitted.Contains(conductor.Id)).ToValueList() });
        return
        [
            .. waiting
                .Where(check => setUps.ContainsKey(check.SetUp) && MeterMode.OfKind(check.Kind) is ResistanceMode && finished.AllFitted(check, fitted))
                .GroupBy(check => check.SetUp)
                .SelectMany(group => AlreadyRight(unfinished, setUps[group.Key].State, group)),
        ];
    }

    private static IEnumerable<Check> AlreadyRight(WiringNetwork unfinished, MachineState state, IEnumerable<Check> checks)
    {
        var bounds = new JunctionBounds(new StateNetwork(unfinished, state));
        return checks.Where(check =>
        {
            var (low, high) = bounds.Resistance(ProbeNodes.Of(unfinished, check.Points[0]), ProbeNodes.Of(unfinished, check.Points[1]));
            return MeterMode.OfKind(check.Kind).Shown(low, high) == check.Expectation;
        });
    }

    /// <summary>The conductors on each piece of metal of the finished machine, with all contacts at rest.</summary>
    private sealed class FittedMetal(WiringNetwork wiring)
    {
        private readonly MetalNets _nets = new(wiring, element => element.Part is not Contact);
        private ILookup<int, string>? _conductors;

        private ILookup<int, string> Conductors => _conductors ??= wiring.Elements
            .Where(element => element.Kind == ElementKind.Copper)
            .ToLookup(copper => _nets.Of(copper.A), copper => copper.Subject);

        public bool AllFitted(Check check, HashSet<string> fitted) =>
            check.Points.SelectMany(point => Conductors[_nets.Of(ProbeNodes.Of(wiring, point))]).ToArray() is { Length: > 0 } conductors
            && Array.TrueForAll(conductors, fitted.Contains);
    }
}
