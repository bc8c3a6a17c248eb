using System.Diagnostics;
using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Benchmarks;

/// <summary>Prints time and memory of the single-fault campaign on machines of growing size.</summary>
internal static class Sizes
{
    private const int FaultsOfTheRival = 4;

    /// <summary>Prints machines of some numbers of terminals.</summary>
    public static void Print(TextWriter output, IReadOnlyList<string> terminals)
    {
        foreach (var count in terminals is [] ? ["500", "2000", "10000"] : terminals)
            Print(output, int.Parse(count, CultureInfo.InvariantCulture));
    }

    /// <summary>Prints how much longer a sparse factor made anew for each fault takes, on machines of some numbers of terminals.</summary>
    public static void PrintBesideSparse(TextWriter output, IReadOnlyList<string> terminals)
    {
        foreach (var count in terminals)
        {
            var design = GeneratedMachine.Of(Flagship.Catalogue(), int.Parse(count, CultureInfo.InvariantCulture));
            WiringCampaign campaign = null!;
            var own = ProcessorTime.Of(1, () => (campaign = new WiringCampaign(design)).Run());
            var readings = 2.0 * campaign.Faults.Count * campaign.CandidateCount;
            Line(output, $"{design.Terminals.Count()} terminals, {campaign.Faults.Count} faults, {campaign.CandidateCount} checks: {readings:N0} readings at both limits.");
            Line(output, $"  low-rank updates, preparation included: {own.Processor:0.0} s of processor time, {readings / own.Processor:N0} readings a second");
            Beside("its blocks alone", RivalCampaign.Unprepared(SparseRival.Readings));
            Beside("all of it in plain double, with a solve for each check", RefactoredRival.Prepare);

            void Beside(string what, Func<WiringNetwork, StateNetwork, bool, RivalReadings> rivalOf)
            {
                var rival = RivalCampaign.Measure(campaign, FaultsOfTheRival, rivalOf);
                Line(output, $"  sparse factor anew for each of {FaultsOfTheRival} faults, {what}: {rival.Time.Processor:0.0} s, {1 / rival.SecondsAReading:N0} readings a second: {rival.SecondsAReading * readings / own.Processor:N0} times as long for each reading");
            }
        }
    }

    private static void Print(TextWriter output, int terminals)
    {
        var design = GeneratedMachine.Of(Flagship.Catalogue(), terminals);
        var verdicts = PrintVerdicts(output, design);
        // What it held is garbage now, so that the whole simulation is seen with what it needs itself.
        GC.Collect();
        var campaign = new WiringCampaign(design);
        FaultDictionary dictionary = null!;
        var ran = ProcessorTime.Of(1, () => dictionary = campaign.Run());
        var changed = Enumerable.Range(0, campaign.Faults.Count).Sum(fault => (long)dictionary.ResponseOf(fault).Checks.Length);
        var (most, held) = (MostResident, GC.GetTotalMemory(forceFullCollection: true) >> 20);
        Line(output, $"  what each fault changes: {ran.Processor:0.00} s of processor time, {ran.Elapsed:0.00} s elapsed; {changed:N0} readings; {most} MiB at most resident, {held} MiB held by campaign and dictionary");
        Line(output, $"  {Enumerable.Range(0, campaign.Faults.Count).Count(fault => verdicts[fault] != HashOf(dictionary, fault))} faults with other verdicts in the two");
        GC.KeepAlive(campaign);
    }

    // A number for each fault that its verdicts give, so that none of the rest need be kept.
    private static int[] PrintVerdicts(TextWriter output, MachineDesign design)
    {
        WiringCampaign campaign = null!;
        FaultDictionary verdicts = null!;
        var prepared = ProcessorTime.Of(1, () => campaign = new WiringCampaign(design));
        var caught = ProcessorTime.Of(1, () => verdicts = campaign.RunVerdicts());
        var count = Enumerable.Range(0, campaign.Faults.Count).Sum(fault => (long)verdicts.ChecksThatCatch(fault).Count());
        Line(output, $"{design.Terminals.Count()} terminals, {campaign.Context.Wiring.Nodes.Count} nodes, {campaign.Faults.Count} faults, {campaign.CandidateCount} checks in {verdicts.SetUps.Count} set-ups:");
        Line(output, $"  prepared in {prepared.Processor:0.00} s of processor time, {prepared.Elapsed:0.00} s elapsed");
        Line(output, $"  which checks catch each fault: {caught.Processor:0.00} s of processor time, {caught.Elapsed:0.00} s elapsed; {count:N0} verdicts; {MostResident} MiB at most resident");
        return [.. Enumerable.Range(0, campaign.Faults.Count).Select(fault => HashOf(verdicts, fault))];
    }

    private static long MostResident => Process.GetCurrentProcess().PeakWorkingSet64 >> 20;

    private static int HashOf(FaultDictionary dictionary, int fault)
    {
        var hash = default(HashCode);
        foreach (var check in dictionary.ChecksThatCatch(fault))
            hash.Add(check);
        return hash.ToHashCode();
    }

    private static void Line(TextWriter output, FormattableString text) => output.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
