using Proveout.Engine.Electrical;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>All that it takes to recompute the dictionary of faults with other software.</summary>
internal sealed record NetworkShape(
    IReadOnlyList<NodeShape> Nodes,
    IReadOnlyList<ElementShape> Elements,
    IReadOnlyList<StateShape> States,
    IReadOnlyList<MeterShape> Meters,
    IReadOnlyList<CandidateShape> Candidates,
    IReadOnlyList<FaultShape> Faults)
{
    public static NetworkShape Of(PlannedMachine planned) => new(
        [.. planned.Campaign.Context.Wiring.Nodes.Select(node => new NodeShape(node.Index, ShapeWords.Of(node.Kind), node.Subject, node.Place))],
        [.. planned.Campaign.Context.Wiring.Elements.Select(ElementShape.Of)],
        [.. planned.Dictionary.SetUps.Select((setUp, index) => new StateShape(setUp.Id, planned.Campaign.OpenElementsOf(index)))],
        [MeterShape.Of(MeterMode.Resistance), MeterShape.Of(MeterMode.FourWire)],
        [.. planned.Dictionary.Checks.Select((_, index) => CandidateShape.Of(planned, index))],
        [.. planned.Campaign.Faults.Select((_, index) => FaultShape.Of(planned, index))]);
}

/// <summary>A terminal, a plug's contact, a conductor's end or a node inside a part.</summary>
internal sealed record NodeShape(int Index, string Kind, string Subject, string Place);

/// <summary>Which elements carry no current in a set-up.</summary>
internal sealed record StateShape(string SetUp, IReadOnlyList<int> Open);

/// <summary>A check that was considered, with its nodes.</summary>
internal sealed record CandidateShape(int Index, string Id, string SetUp, string Meter, int Red, int Black, double Seconds, IntervalShape Expected)
{
    public static CandidateShape Of(PlannedMachine planned, int index)
    {
        var check = planned.Dictionary.Checks[index];
        var (red, black) = planned.Campaign.NodesOf(index);
        return new CandidateShape(index, check.Id, check.SetUp, check.Kind, red, black, check.CostSeconds, IntervalShape.Of(check.Expectation));
    }
}
