using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>What a plan does against three mistakes made together, each of which can hurt or destroy, for people.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Simulated">Threes of mistakes that can be made together.</param>
/// <param name="Caught">How many of them the plan surely catches.</param>
/// <param name="Contradictory">Threes left out because two of their mistakes cannot be made together.</param>
/// <param name="Examples">Some that it does not surely catch although it catches one of the three alone.</param>
public sealed record TriplesView(MachineSummary Machine, long Simulated, long Caught, long Contradictory, IReadOnlyList<MaskedThree> Examples)
{
    private const int MostExamples = 5;

    /// <summary>How many the plan does not surely catch.</summary>
    public long Masked => Simulated - Caught;

    /// <summary>What to mind before anything is done about them: what stands before every set-up.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>How many there are and what becomes of them, in sentences.</summary>
    public string Summary => FormattableString.Invariant(
        $"{Simulated:N0} threes of mistakes that can hurt or destroy can be made together; the plan surely catches {Caught:N0} of them. ")
        + (Masked == 0
            ? "It misses none."
            : FormattableString.Invariant($"{Masked:N0} it does not: the three are left to the eye each for itself, or some of them hide the others. No reading of the plan surely tells those: look, tug, compare each conductor with the drawing, and keep the precautions of the order of energising."));

    /// <summary>How many there are to evaluate, those among them that contradict each other included.</summary>
    public static long CountOf(PlannedMachine planned)
    {
        long dangerous = planned.Dictionary.Faults.Count(fault => fault.Severity >= Severity.Damage);
        return dangerous * (dangerous - 1) * (dangerous - 2) / 6;
    }

    /// <summary>Evaluates all of them. Takes some seconds.</summary>
    /// <param name="planned">The machine with its plan.</param>
    /// <param name="progress">Told the share that is done, 0 to 1.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static TriplesView Of(PlannedMachine planned, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        var report = new TripleCampaign(planned.Dictionary, planned.Plan, new WiringInteractions(planned.Campaign)).Run(progress, cancellation);
        return new TriplesView(
            planned.Machine.Summary,
            report.Simulated,
            report.Caught,
            report.Contradictory,
            [.. report.Examples.DistinctBy(triple => (triple[0], triple[1])).Take(MostExamples).Select(triple => MaskedThree.Of(triple.Select(fault => planned.Dictionary.Faults[fault])))])
        {
            Cautions = CautionsOf([.. planned.Dictionary.SetUps.Where(setUp => setUp.Phase == Phase.Dead)]),
        };
    }

    private static IReadOnlyList<string> CautionsOf(SetUp[] dead) =>
        dead.Length == 0 ? [] : [.. dead[0].Cautions.Where(caution => dead.All(setUp => setUp.Cautions.Contains(caution)))];
}
