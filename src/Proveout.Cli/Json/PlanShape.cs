using System.Text.Json.Serialization;
using Proveout.Engine.Faults;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>A check plan with what it covers; with the network and the fault dictionary when asked for.</summary>
internal sealed record PlanShape(
    string Format,
    MachineShape Machine,
    PlanSummaryShape Summary,
    IReadOnlyList<SetUpShape> SetUps,
    IReadOnlyList<CheckShape> Checks,
    IReadOnlyList<CoverageShape> Coverage,
    IReadOnlyList<GapShape> LeftToTheEye,
    IReadOnlyList<IReadOnlyList<string>> AmbiguityGroups,
    PairsShape Pairs,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] TriplesShape? Triples,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] NetworkShape? Network)
{
    public static PlanShape Of(PlannedMachine planned, PlanView view, TriplesView? triples, NetworkShape? network) => new(
        "proveout-plan 1",
        MachineShape.Of(planned.Machine),
        PlanSummaryShape.Of(planned, view),
        [.. planned.Dictionary.SetUps.Select(SetUpShape.Of)],
        [.. view.Groups.SelectMany(group => group.Checks).Select(check => CheckShape.Of(check.Check))],
        [.. view.Coverage.Select(kind => new CoverageShape(kind.Kind, kind.Faults, kind.Caught))],
        [.. view.Uncovered.Select(group => new GapShape(group.Sentence, group.OtherEvidence, SeverityWords.Of(group.Severity), group.Count, group.Examples))],
        [.. view.Ambiguous.Select(group => group.Sentences)],
        PairsShape.Of(view.Pairs),
        triples is null ? null : TriplesShape.Of(triples),
        network);
}

/// <summary>The plan in figures. The gap is a fraction of the plan's own time; 0 when it is proved to be the quickest.</summary>
internal sealed record PlanSummaryShape(
    int Checks, int CandidateChecks, int Faults, int Caught, double Seconds, double LowerBoundSeconds, double Gap, string Method, string Optimality,
    SearchShape Search, BenchTimeShape Bench)
{
    public static PlanSummaryShape Of(PlannedMachine planned, PlanView view) => new(
        planned.Plan.Checks.Count,
        view.CandidateChecks,
        view.Faults,
        view.Caught,
        planned.Plan.Choice.CostSeconds,
        planned.Plan.Choice.LowerBoundSeconds,
        planned.Plan.Choice.Gap,
        planned.Plan.Choice.Method,
        view.Optimality,
        SearchShape.Of(planned.Plan.Choice.Size),
        BenchTimeShape.Of(planned.Plan.Order));
}

/// <summary>A state in which is measured. Cautions come before instructions.</summary>
internal sealed record SetUpShape(string Id, string Title, IReadOnlyList<string> Cautions, IReadOnlyList<string> Instructions, double Seconds)
{
    public static SetUpShape Of(SetUp setUp) => new(setUp.Id, setUp.Title, [.. setUp.Cautions], [.. setUp.Instructions], setUp.CostSeconds);
}

/// <summary>Faults of one kind, and how many of them the plan surely catches.</summary>
internal sealed record CoverageShape(string Kind, int Faults, int Caught);

/// <summary>Faults that no dead check surely catches, and what else would show them.</summary>
internal sealed record GapShape(string Sentence, string OtherEvidence, string Severity, int Count, IReadOnlyList<string> Examples);
