using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Benchmarks;

/// <summary>How long it takes to find what every mistake does in the energised machine; and whether another version of the engine finds the same.</summary>
internal static class LiveSpeed
{
    private static readonly string[] Samples = ["alderbrook", "pennywort", "quarrymoor"];

    // Below a thousandth leaks decide a figure, and they are known to four digits at best.
    private const double LeastFigure = 1e-3;

    // Metal that only leaks hold knows its potential to some 0.2 mV of 230 V; other figures agree to a part in a billion.
    private const double SameShare = 1e-6;

    /// <summary>Prints processor time for a sample, turn by turn; the first compiles.</summary>
    public static void Print(TextWriter output, IReadOnlyList<string> more)
    {
        var design = Flagship.Sample(more is [var name, ..] ? name : Samples[0]);
        var campaign = new WiringCampaign(design);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{design.Name}: {campaign.Faults.Count} faults"));
        for (var turn = 0; turn < 4; turn++)
        {
            LiveConsequences? consequences = null;
            var made = ProcessorTime.Of(1, () => consequences = new LiveConsequences(new LiveModel(campaign.Context)));
            var run = ProcessorTime.Of(1, () => _ = consequences!.OfAll(campaign.Faults, CancellationToken.None));
            var all = ProcessorTime.Of(1, () => campaign.Faults.AsParallel().ForAll(fault => consequences!.FindingsOf(fault.Changes)));
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"  prepared in {made.Processor:0.00} s; the worst of each fault in {run.Processor:0.00} s of processor time, {run.Elapsed:0.00} s elapsed; all findings in {all.Processor:0.00} s"));
        }
    }

    /// <summary>Writes every finding of every mistake in the samples, with all digits.</summary>
    public static void Keep(TextWriter output, string path)
    {
        var lines = Lines();
        File.WriteAllLines(path, lines);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{lines.Count} findings kept in {path}"));
    }

    /// <summary>Compares every finding with kept ones.</summary>
    /// <returns>True when kind, severity, sentence and state are the same everywhere and figures agree to a part in a million.</returns>
    public static bool Compare(TextWriter output, string path)
    {
        var (before, now) = (File.ReadAllLines(path), Lines());
        var (unequal, largest) = (Math.Abs(before.Length - now.Count), 0.0);
        foreach (var (old, recent) in before.Zip(now))
        {
            var (one, two) = (old.Split('\t'), recent.Split('\t'));
            var (was, value) = (double.Parse(one[1], CultureInfo.InvariantCulture), double.Parse(two[1], CultureInfo.InvariantCulture));
            var difference = Math.Abs(was - value) / Math.Max(LeastFigure, Math.Max(Math.Abs(was), Math.Abs(value)));
            largest = Math.Max(largest, difference);
            if ((one[0] != two[0] || difference > SameShare) && unequal++ < 12)
                output.WriteLine($"before {old}{Environment.NewLine}now    {recent}");
        }

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{before.Length} findings before, {now.Count} now: {unequal} differ; figures by {largest:0.0e0} of their value at most"));
        return unequal == 0;
    }

    private static List<string> Lines() => [.. Samples.SelectMany(name => LinesOf(name, Flagship.Sample(name)))];

    private static IEnumerable<string> LinesOf(string name, MachineDesign design)
    {
        var campaign = new WiringCampaign(design);
        var consequences = new LiveConsequences(new LiveModel(campaign.Context));
        return campaign.Faults.AsParallel().AsOrdered().SelectMany(fault => consequences.FindingsOf(fault.Changes).Select(finding => string.Create(
            CultureInfo.InvariantCulture,
            $"{name} {fault.Fault.Id} {finding.Kind} {finding.Severity} {finding.Subject} {finding.State.Name} {finding.Sentence}\t{finding.Value:R}")));
    }
}
