using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Benchmarks;

/// <summary>Prints the campaign's speed beside that of general-purpose ways to the same readings, all measured in this process.</summary>
internal static class Comparison
{
    private const int WarmTurns = 15;
    // What plain double still reads: insulation is a billion times as much.
    private const double AnyWire = 1_000;
    private const int DenseSample = 8;
    private const int SparseSample = 60;
    private const int DiagnosisSample = 25;

    public static void Print(TextWriter output)
    {
        var design = Flagship.Read();
        var campaign = new WiringCampaign(design);
        var dictionary = campaign.Run();
        _ = ProcessorTime.Of(WarmTurns, () => dictionary = new WiringCampaign(design).Run());

        var readings = 2.0 * campaign.Faults.Count * campaign.CandidateCount;
        Line(output, $"{campaign.Context.Wiring.Nodes.Count} nodes, {campaign.Faults.Count} faults, {campaign.CandidateCount} checks in {dictionary.SetUps.Count} set-ups: {readings:N0} readings at both limits.");
        Line(output, $"{Environment.ProcessorCount} processors. Seconds of processor time, all threads together; elapsed seconds in brackets.");
        var prepare = ProcessorTime.Of(WarmTurns, () => campaign = new WiringCampaign(design));
        Row(output, "prepare the campaign", prepare);
        var run = ProcessorTime.Of(WarmTurns, () => dictionary = campaign.Run());
        Row(output, "run it: low-rank updates", run);
        Line(output, $"  {readings / run.Processor:N0} readings a processor second");
        Rival(output, campaign, "for each fault: sparse factor of the blocks", SparseSample, RivalCampaign.Unprepared(SparseRival.Readings), run.Processor / readings);
        Rival(output, campaign, "for each fault: sparse factor, a solve a check", SparseSample, RefactoredRival.Prepare, run.Processor / readings);
        Line(output, $"  the two differ by {RivalCampaign.LargestDifference(campaign, SparseSample, RivalCampaign.Unprepared(SparseRival.Readings), RefactoredRival.Prepare, AnyWire):0e0} of a reading below {AnyWire:0} ohm at most");
        Rival(output, campaign, "for each fault: dense LU", DenseSample, RivalCampaign.Unprepared(DenseRival.Readings), run.Processor / readings);
        Row(output, "plan, exact cover", ProcessorTime.Of(1, () => CheckPlan.Of(dictionary)));
        Row(output, "plan, greedy", ProcessorTime.Of(3, () => CheckPlan.Of(dictionary, onlyGreedy: true)));
        Bench(output, dictionary);
    }

    private static void Rival(
        TextWriter output, WiringCampaign campaign, string name, int sample, Func<WiringNetwork, StateNetwork, bool, RivalReadings> rivalOf, double ownSecondsAReading)
    {
        var rival = RivalCampaign.Measure(campaign, sample, rivalOf);
        Row(output, $"{name} ({sample} faults)", rival.Time);
        Line(output, $"  {1 / rival.SecondsAReading:N0} readings a processor second: {rival.SecondsAReading / ownSecondsAReading:N0} times as long for each reading");
    }

    private static void Bench(TextWriter output, FaultDictionary dictionary)
    {
        var plan = CheckPlan.Of(dictionary, onlyGreedy: true);
        var step = plan.Caught.Count / DiagnosisSample;
        var benches = Enumerable.Range(0, DiagnosisSample).Select(index => Readings(dictionary, plan, plan.Caught[index * step])).ToArray();
        var found = new Posterior[benches.Length];
        Row(output, $"explain a bench of {plan.Checks.Count} readings", ProcessorTime.Of(5, () =>
        {
            for (var index = 0; index < benches.Length; index++)
                found[index] = Diagnosis.Of(dictionary, benches[index]);
        }), benches.Length);
        Row(output, "choose the next check", ProcessorTime.Of(5, () =>
        {
            for (var index = 0; index < benches.Length; index++)
                NextCheck.Of(dictionary, found[index], benches[index].Select(reading => reading.CheckId).ToHashSet(), BenchPosition.Start);
        }), benches.Length);
    }

    // What a machine with the fault shows: the middle of each interval.
    private static Reading[] Readings(FaultDictionary dictionary, CheckPlan plan, int fault) =>
    [
        .. from check in plan.Checks
           let shown = dictionary.IntervalOf(fault, check)
           select new Reading(dictionary.Checks[check].Id, double.IsPositiveInfinity(shown.High) ? shown.High : (shown.Low + shown.High) / 2),
    ];

    private static void Row(TextWriter output, string name, (double Processor, double Elapsed) time, int parts = 1) =>
        Line(output, $"{name,-50} {time.Processor / parts,10:0.0000} s ({time.Elapsed / parts:0.0000} s)");

    private static void Line(TextWriter output, FormattableString text) => output.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
