using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Chooses what is measured at a stage: the fewest readings that tell every mistake apart from the sound machine that can be told there.</summary>
internal sealed class StageChecks(LiveModel model, IReadOnlyList<WiringFault> faults)
{
    private const double SecondsAReading = 20;
    private const double SecondsAWarmUp = 1800;

    // Copper at its capacity is 40 K above 30 °C (70 °C, PVC; IEC 60364-5-52); heat rises with the square of the current. Half as much again, and 5 K
    // for the thermometer.
    private const double KelvinAtCapacity = 40;

    private readonly StageProbes _probes = new(model);

    /// <summary>The checks of a stage.</summary>
    public ValueList<LiveCheck> Of(int number, StagePlan plan, IReadOnlyList<ResidualRisk> residuals, IReadOnlySet<int> excluded, CancellationToken cancellation)
    {
        LiveMeasurement[] measurements =
        [
            .. from state in plan.States
               from probe in _probes.Of(plan.Apart)
               let measurement = new LiveMeasurement(model, plan.Stage, state, probe)
               where measurement.IsSettled
               select measurement,
        ];
        int[] open = [.. Enumerable.Range(0, faults.Count).Where(fault => !excluded.Contains(fault))];
        var told = new List<int>[measurements.Length];
        for (var index = 0; index < told.Length; index++)
            told[index] = [];
        Parallel.ForEach(open, new ParallelOptions { CancellationToken = cancellation }, fault => Look(plan, measurements, fault, told));
        return
        [
            .. Fewest(plan, measurements, told).Select(index => VoltageCheck(number, measurements[index], [.. told[index].Order()])),
            .. CurrentChecks(number, plan),
            .. WarmthChecks(number, plan, residuals),
        ];
    }

    /// <summary>The most direct current that the supplies of the sound machine give at a stage; null when they give none.</summary>
    public double? MostAmperes(StagePlan plan) =>
        plan.States.SelectMany(state => model.Sound(state, plan.Stage).Supplies).Where(IsMain).Select(supply => (double?)supply.Amperes).Max();

    private void Look(StagePlan plan, LiveMeasurement[] measurements, int fault, List<int>[] told)
    {
        var changes = faults[fault].Changes;
        foreach (var group in measurements.Index().GroupBy(item => item.Item.State))
        {
            var solution = model.Solve(group.Key, changes, plan.Stage);
            if (ReferenceEquals(solution, model.Sound(group.Key, plan.Stage)))
                continue;
            foreach (var (index, measurement) in group)
                if (measurement.Tells(changes, solution))
                    lock (told[index])
                        told[index].Add(fault);
        }
    }

    // What is measured whatever it tells: the supplies under the stage's load, and every output before its load is mated for the first time. Then, each
    // time, the reading that tells most of what is not told yet.
    private static List<int> Fewest(StagePlan plan, LiveMeasurement[] measurements, List<int>[] told)
    {
        var left = told.SelectMany(list => list).ToHashSet();
        List<int> chosen = [.. measurements.Index().Where(item => item.Item.State == plan.States[^1] && IsAlwaysMeasured(plan, item.Item.Probe)).Select(item => item.Index)];
        foreach (var index in chosen)
            left.ExceptWith(told[index]);
        while (left.Count > 0)
        {
            var best = Enumerable.Range(0, told.Length).MaxBy(index => told[index].Count(left.Contains));
            chosen.Add(best);
            left.ExceptWith(told[best]);
        }

        return chosen;
    }

    private static bool IsAlwaysMeasured(StagePlan plan, VoltageProbe probe) =>
        !probe.IsAlternating && (probe.IsSupply || (plan.TriesOutputs && plan.Apart.Any(gate => gate.Kind > GateKind.Signal && gate.Part == probe.RedPoint.Subject && gate.Holds(probe.Red))));

    private static LiveCheck VoltageCheck(int number, LiveMeasurement measurement, ValueList<int> excludes)
    {
        var probe = measurement.Probe;
        var (red, black) = (probe.RedPoint, probe.BlackPoint);
        return new(
            new Check(
                Identifier(number, $"{measurement.State.Name}-{red}-{black}"),
                "voltage",
                $"stage-{number}",
                $"{red} to {black}",
                $"With {measurement.State.Words}: red lead on {red}, black lead on {black}, meter on {(probe.IsAlternating ? "alternating" : "direct")} volts.",
                [red, black],
                "V",
                measurement.Expectation,
                "",
                SecondsAReading),
            excludes);
    }

    private IEnumerable<LiveCheck> CurrentChecks(int number, StagePlan plan) =>
        from state in plan.States
        from supply in model.Sound(state, plan.Stage).Supplies
        where IsMain(supply) && supply.Amperes > 0.05
        let margin = (0.4 * supply.Amperes) + 0.1
        select new LiveCheck(
            new Check(
                Identifier(number, $"{state.Name}-{supply.Part}-current"),
                "current",
                $"stage-{number}",
                $"Current of {supply.Part}",
                $"With {state.Words}: read the current of {supply.Part} on the bench supply that feeds in its place, or with a clamp for direct current around one output conductor.",
                [],
                "A",
                new ReadingInterval(Math.Max(0, supply.Amperes - margin), supply.Amperes + margin),
                "The sum of what is switched on; boards and motors differ, so the band is wide.",
                SecondsAReading),
            []);

    private IEnumerable<LiveCheck> WarmthChecks(int number, StagePlan plan, IReadOnlyList<ResidualRisk> residuals)
    {
        if (plan.Closed.Count == 0 || plan.Closed.All(gate => gate.Kind != GateKind.Heater))
            yield break;
        var solution = model.Sound(plan.States[^1], plan.Stage);
        var (conductor, share) = model.Context.Design.Conductors
            .Select(conductor => (conductor, solution.HeatingAmperes(model.Context.CopperOf(conductor).Index) / CurrentCapacity.Of(conductor.CrossSection.SquareMillimeters)))
            .MaxBy(item => item.Item2);
        if (share <= 0)
            yield break;
        yield return new LiveCheck(
            new Check(
                Identifier(number, "warmth"),
                "temperature-rise",
                $"stage-{number}",
                $"Warmth of joints, hottest expected at {conductor.Id}",
                $"After half an hour with {plan.States[^1].Name}: switch off, unplug, prove dead, then feel or measure every joint of the power circuits against its twin. "
                + $"{conductor.Id} from {conductor.From} to {conductor.To} is loaded most.",
                [],
                "K",
                new ReadingInterval(0, Math.Ceiling((KelvinAtCapacity * share * share * 1.5) + 5)),
                FormattableString.Invariant($"It carries {share * 100:0} % of what it bears. A joint that is more than 10 K warmer than its twin is poor."),
                SecondsAWarmUp),
            [.. residuals.Where(risk => faults[risk.Fault].Fault.Kind.StartsWith("poor-joint", StringComparison.Ordinal)).Select(risk => risk.Fault)]);
    }

    // The supplies that feed the machine, not the regulators of its boards.
    private bool IsMain(SupplyPoint supply) => supply.IsAlive && model.Context.Design.FindPart(supply.Part)!.Type.ClassLetter is "T" or "X" or "G";

    private static string Identifier(int number, string name) =>
        $"stage-{number}-" + string.Concat(name.ToLowerInvariant().Replace("+", "plus", StringComparison.Ordinal)
            .Select(letter => char.IsAsciiLetterOrDigit(letter) || letter == '.' ? letter : '-'));
}
