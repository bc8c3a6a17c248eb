using System.Diagnostics;
using System.Globalization;
using Proveout.Engine.Electrical;

namespace Proveout.Benchmarks;

/// <summary>Prints time and memory of the single-fault campaign on machines of growing size.</summary>
internal static class Sizes
{
    public static void Print(TextWriter output)
    {
        foreach (var terminals in new[] { 500, 2_000, 10_000 })
            Print(output, terminals);
    }

    private static void Print(TextWriter output, int terminals)
    {
        var design = GeneratedMachine.Of(Flagship.Catalogue(), terminals);
        var watch = Stopwatch.StartNew();
        var campaign = new WiringCampaign(design);
        var prepared = watch.Elapsed.TotalSeconds;
        watch.Restart();
        var dictionary = campaign.Run();
        var ran = watch.Elapsed.TotalSeconds;
        var changed = Enumerable.Range(0, campaign.Faults.Count).Sum(fault => (long)dictionary.ResponseOf(fault).Checks.Length);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{design.Terminals.Count(),6} terminals, {campaign.Context.Wiring.Nodes.Count,6} nodes, {campaign.Faults.Count,6} faults, {campaign.CandidateCount,6} checks in {dictionary.SetUps.Count,4} set-ups: prepared in {prepared:0.000} s, run in {ran:0.000} s, {changed:N0} readings changed, {Environment.WorkingSet >> 20} MiB resident"));
    }
}
