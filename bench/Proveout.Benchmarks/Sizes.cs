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
        var (most, held) = (Process.GetCurrentProcess().PeakWorkingSet64 >> 20, GC.GetTotalMemory(forceFullCollection: true) >> 20);
        Line(output, $"{design.Terminals.Count()} terminals, {campaign.Context.Wiring.Nodes.Count} nodes, {campaign.Faults.Count} faults, {campaign.CandidateCount} checks in {dictionary.SetUps.Count} set-ups:");
        Line(output, $"  prepared in {prepared.Processor:0.00} s, run in {ran.Processor:0.00} s of processor time; {changed:N0} readings changed");
        Line(output, $"  {most} MiB at most resident, {held} MiB held by campaign and dictionary");
        GC.KeepAlive(campaign);
    }

    private static void Line(TextWriter output, FormattableString text) => output.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
