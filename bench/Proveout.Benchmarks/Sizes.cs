using System.Diagnostics;
using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Benchmarks;

/// <summary>Prints time and memory of the single-fault campaign on machines of growing size.</summary>
internal static class Sizes
{
    /// <summary>Prints machines of some numbers of terminals.</summary>
    public static void Print(TextWriter output, IReadOnlyList<string> terminals)
    {
        foreach (var count in terminals is [] ? ["500", "2000"] : terminals)
            Print(output, int.Parse(count, CultureInfo.InvariantCulture));
    }

    private static void Print(TextWriter output, int terminals)
    {
        var design = GeneratedMachine.Of(Flagship.Catalogue(), terminals);
        WiringCampaign campaign = null!;
        FaultDictionary dictionary = null!;
        var prepared = ProcessorTime.Of(1, () => campaign = new WiringCampaign(design));
        var ran = ProcessorTime.Of(1, () => dictionary = campaign.Run());
        var changed = Enumerable.Range(0, campaign.Faults.Count).Sum(fault => (long)dictionary.ResponseOf(fault).Checks.Length);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{design.Terminals.Count(),6} terminals, {campaign.Context.Wiring.Nodes.Count,6} nodes, {campaign.Faults.Count,6} faults, {campaign.CandidateCount,6} checks in {dictionary.SetUps.Count,4} set-ups: prepared in {prepared.Processor:0.00} s processor, run in {ran.Processor:0.00} s processor, {changed:N0} readings changed, {Process.GetCurrentProcess().PeakWorkingSet64 >> 20} MiB at most resident, {GC.GetTotalMemory(forceFullCollection: true) >> 20} MiB held with the campaign"));
        GC.KeepAlive(campaign);
    }
}
