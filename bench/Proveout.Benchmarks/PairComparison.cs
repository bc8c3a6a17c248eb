using System.Diagnostics;
using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Benchmarks;

/// <summary>Prints time and memory of all pairs and triples of faults, beside a sparse factor made anew for each pair: of the flagship, or of generated machines of some numbers of terminals.</summary>
internal static class PairComparison
{
    private const int Turns = 5;
    private const int RivalPairs = 40;

    public static void Print(TextWriter output, IReadOnlyList<string> terminals)
    {
        if (terminals.Count == 0)
            PrintMachine(output, "flagship", Flagship.Read(), withTriples: true);
        foreach (var count in terminals.Select(text => int.Parse(text, CultureInfo.InvariantCulture)))
            PrintMachine(output, $"{count} terminals", GeneratedMachine.Of(Flagship.Catalogue(), count), withTriples: false);
    }

    private static void PrintMachine(TextWriter output, string name, MachineDesign design, bool withTriples)
    {
        var campaign = new WiringCampaign(design);
        var dictionary = campaign.RunVerdicts();
        var plan = CheckPlan.Of(dictionary, onlyGreedy: true);
        Line(output, $"{name}: {campaign.Context.Wiring.Nodes.Count} nodes, {campaign.Faults.Count} faults, {plan.Uncaught.Count} of them not caught alone, plan of {plan.Checks.Count} of {campaign.CandidateCount} checks");
        var turns = withTriples ? Turns : 1;
        WiringInteractions interactions = null!;
        Row(output, "tables", ProcessorTime.Of(turns, () => interactions = new WiringInteractions(campaign)));
        PairReport report = null!;
        if (withTriples)
            Row(output, "all pairs on the plan, guards included: first time", ProcessorTime.Of(1, Pairs));
        var pairs = ProcessorTime.Of(turns, Pairs);
        Row(output, withTriples ? "the same, once compiled" : "all pairs on the plan, guards included", pairs);
        // Before the guards are made once more, to be measured alone: what lies about of them is no room that the pairs take.
        Line(output, $"  {Process.GetCurrentProcess().PeakWorkingSet64 >> 20} MiB at most resident");
        var left = 0L;
        Row(output, "guards alone", ProcessorTime.Of(turns, () => left = Left(new PairScreen(dictionary, plan.Checks, new FaultThreads(interactions), CancellationToken.None), plan)));
        Line(output, $"  {report.Simulated:N0} pairs, {report.Simulated / pairs.Processor:N0} a processor second; {left:N0} ({(double)left / report.Simulated:0.0000%}) not decided by guards; {report.Contradictory:N0} contradictory left out");
        Line(output, $"  masked: both caught alone {report.BothCaught.Masked:N0}, one {report.OneCaught.Masked:N0}, none {report.NoneCaught.Masked:N0}; {report.Masked.Count(pair => pair.IsIndistinguishable):N0} indistinguishable");
        Rival(output, campaign, pairs.Processor / report.Simulated);
        if (withTriples)
        {
            TripleReport triples = null!;
            Row(output, "all triples of dangerous faults on the plan", ProcessorTime.Of(1, () => triples = new TripleCampaign(dictionary, plan, interactions).Run()));
            Line(output, $"  {triples.Simulated:N0} triples, {triples.Masked:N0} masked, {triples.Contradictory:N0} contradictory left out");
            Row(output, "the same, and all candidates for pairs not caught", ProcessorTime.Of(1, () => report = new PairCampaign(dictionary, plan, interactions).Run()));
            PairPlan grown = null!;
            Row(output, "a plan that catches dangerous pairs too", ProcessorTime.Of(1, () => grown = PairPlan.Of(dictionary, interactions, onlyGreedy: true)));
            Line(output, $"  {grown.Plan.Checks.Count} checks; {grown.Report.Masked.Count} pairs listed that it masks, {grown.Report.Masked.Count(pair => pair.IsIndistinguishable)} of them indistinguishable");
        }

        void Pairs() => report = new PairCampaign(dictionary, plan, interactions, beyondPlan: false).Run();
    }

    private static long Left(PairScreen screen, CheckPlan plan) => plan.Caught.Sum(fault =>
        (long)screen.Overturning(fault).Count(other => !screen.IsCaught(other) || (other > fault && Array.BinarySearch(screen.Overturning(other), fault) >= 0)));

    // The rival finds out the same of each pair: every check of every set-up, until the pair is decided, costs at least one factor at one limit.
    private static void Rival(TextWriter output, WiringCampaign campaign, double ownSecondsAPair)
    {
        var wiring = campaign.Context.Wiring;
        var tables = campaign.PortTables();
        var state = new StateNetwork(wiring, DeadSetUps.Of(wiring.Design)[^1].State);
        var random = new Random(1);
        var time = ProcessorTime.Of(1, () =>
        {
            for (var pair = 0; pair < RivalPairs; pair++)
            {
                var one = campaign.Faults[random.Next(campaign.Faults.Count)];
                var two = campaign.Faults[random.Next(campaign.Faults.Count)];
                var edges = FaultyNetwork.Edges(state, new WiringFault(one.Fault, [.. one.Changes.Concat(two.Changes).Distinct()]), atHigh: false);
                _ = new ResistorNetwork(wiring.Nodes.Count, edges).Resistance(tables[^1].Candidates[0].A, tables[^1].Candidates[0].B);
            }
        });
        Row(output, $"sparse factor anew for each pair ({RivalPairs})", time);
        Line(output, $"  one reading at one limit of one set-up: {time.Processor / RivalPairs / ownSecondsAPair:N0} times as long for each pair");
    }

    private static void Row(TextWriter output, string name, (double Processor, double Elapsed) time) =>
        Line(output, $"{name,-50} {time.Processor,10:0.0000} s ({time.Elapsed:0.0000} s)");

    private static void Line(TextWriter output, FormattableString text) => output.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
