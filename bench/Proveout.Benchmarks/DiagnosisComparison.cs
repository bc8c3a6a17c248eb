using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Benchmarks;

/// <summary>Prints how fast a diagnosis is on the flagship, and how simulated builders fare beside the entropy bound.</summary>
internal static class DiagnosisComparison
{
    private const int Turns = 10;
    private const int Builders = 500;
    private const int EveryHowManyMakesTwo = 3;

    public static void Print(TextWriter output)
    {
        var flagship = new WiringCampaign(Flagship.Read());
        Speed(output, flagship);
        output.WriteLine();
        output.WriteLine("| machine | mistakes | builders | checks, mean | once off, mean | bits once off | most bits a check | entropy bound | truth first | always suspected |");
        output.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        Fare(output, "pennywort", new WiringCampaign(Flagship.Sample("pennywort")));
        Fare(output, "alderbrook", flagship);
    }

    private static void Speed(TextWriter output, WiringCampaign campaign)
    {
        var dictionary = campaign.Run();
        var changes = Enumerable.Range(0, dictionary.Faults.Count).Sum(fault => (long)dictionary.ResponseOf(fault).Checks.Length);
        Line(output, $"{dictionary.Faults.Count} faults, {dictionary.Checks.Count} checks, {changes} intervals that differ from the sound machine's. Seconds of processor time; elapsed in brackets.");
        var nothing = Diagnosis.Of(dictionary, []);
        var none = new HashSet<string>();
        Row(output, "lay out the intervals (once a machine)", ProcessorTime.Of(1, () => NextCheck.Of(dictionary, nothing, none, BenchPosition.Start)));
        Row(output, "weigh all faults, nothing read", ProcessorTime.Of(Turns, () => Diagnosis.Of(dictionary, [])));
        Row(output, "next check, nothing read, every fault possible", ProcessorTime.Of(Turns, () => NextCheck.Of(dictionary, nothing, none, BenchPosition.Start)));
        var plan = CheckPlan.Of(dictionary, onlyGreedy: true);
        Reading[] passed = [.. plan.Checks.Select(check => new Reading(dictionary.Checks[check].Id, Middle(dictionary.Checks[check].Expectation)))];
        var off = Off(dictionary, plan, passed);
        Row(output, FormattableString.Invariant($"explain {off.Length} readings, two of them off"), ProcessorTime.Of(Turns, () => Diagnosis.Of(dictionary, off)));
        var posterior = Diagnosis.Of(dictionary, off);
        Row(output, FormattableString.Invariant($"next check, {posterior.Hypotheses.Count} explanations"), ProcessorTime.Of(Turns, () => NextCheck.Of(dictionary, posterior, none, BenchPosition.Start)));
    }

    // Two mistakes far apart: the first and the last that the plan catches.
    private static Reading[] Off(FaultDictionary dictionary, CheckPlan plan, Reading[] passed)
    {
        var readings = passed.ToDictionary(reading => reading.CheckId);
        foreach (var fault in new[] { plan.Caught[0], plan.Caught[^1] })
            foreach (var check in plan.Checks.Where(check => dictionary.IsSurelyCaught(fault, check)))
                readings[dictionary.Checks[check].Id] = new(dictionary.Checks[check].Id, Middle(dictionary.IntervalOf(fault, check)));
        return [.. readings.Values];
    }

    private static double Middle(ReadingInterval shown) => double.IsPositiveInfinity(shown.High) ? shown.High : (shown.Low + shown.High) / 2;

    private static void Fare(TextWriter output, string machine, WiringCampaign campaign)
    {
        var builders = new SimulatedBuilders(campaign.Run(), () => new TogetherSimulator(campaign));
        var trials = Enumerable.Range(0, Builders).AsParallel().AsOrdered()
            .Select(seed => builders.Try(seed % EveryHowManyMakesTwo == 0 ? 2 : 1, seed))
            .ToArray();
        foreach (var some in trials.GroupBy(trial => trial.Made.Count).OrderBy(some => some.Key))
        {
            var mostBits = some.Max(trial => trial.MostBits);
            var bound = some.Average(trial => trial.BitsOnceOff) / mostBits;
            Line(output, $"| {machine} | {some.Key} | {some.Count()} | {some.Average(trial => trial.Checks):0.0} | {some.Average(trial => trial.ChecksOnceOff):0.00} | {some.Average(trial => trial.BitsOnceOff):0.00} | {mostBits:0.00} | {bound:0.00} | {some.Average(trial => trial.Rank == 1 ? 1 : 0):P1} | {some.Average(trial => trial.WasAlwaysSuspected ? 1 : 0):P1} |");
        }

        Line(output, $"  {machine}: {builders.PriorBits:0.0} bits before anything is read; {builders.WhileAllPass.Count} checks while all pass; ranks {string.Join(' ', trials.GroupBy(trial => trial.Rank).OrderBy(rank => rank.Key).Select(rank => $"{rank.Key}:{rank.Count()}"))}; most checks once off {trials.Max(trial => trial.ChecksOnceOff)}");
    }

    private static void Row(TextWriter output, string name, (double Processor, double Elapsed) time) =>
        Line(output, $"{name,-60} {time.Processor,10:0.0000} s ({time.Elapsed:0.0000} s)");

    private static void Line(TextWriter output, FormattableString text) => output.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
