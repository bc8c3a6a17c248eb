using System.Diagnostics;
using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Benchmarks;

/// <summary>Prints time and memory of the single-fault campaign on machines of growing size.</summary>
internal static class Sizes
{
    private const int FaultsOfTheRival = 4;

    /// <summary>Prints machines of some numbers of terminals.</summary>
    public static void Print(TextWriter output, IReadOnlyList<string> terminals)
    {
        foreach (var count in terminals is [] ? ["500", "2000"] : terminals)
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
        WiringCampaign campaign = null!;
        FaultDictionary dictionary = null!;
        var prepared = ProcessorTime.Of(1, () => campaign = new WiringCampaign(design));
        FaultDictionary verdicts = null!;
        var caught = ProcessorTime.Of(1, () => verdicts = campaign.RunVerdicts());
        var mostOfCatching = Process.GetCurrentProcess().PeakWorkingSet64 >> 20;
        var ran = ProcessorTime.Of(1, () => dictionary = campaign.Run());
        var changed = Enumerable.Range(0, campaign.Faults.Count).Sum(fault => (long)dictionary.ResponseOf(fault).Checks.Length);
        var (most, held) = (Process.GetCurrentProcess().PeakWorkingSet64 >> 20, GC.GetTotalMemory(forceFullCollection: true) >> 20);
        Line(output, $"{design.Terminals.Count()} terminals, {campaign.Context.Wiring.Nodes.Count} nodes, {campaign.Faults.Count} faults, {campaign.CandidateCount} checks in {dictionary.SetUps.Count} set-ups:");
        Line(output, $"  prepared in {prepared.Processor:0.00} s of processor time, {prepared.Elapsed:0.00} s elapsed");
        Line(output, $"  which checks catch each fault: {caught.Processor:0.00} s of processor time, {caught.Elapsed:0.00} s elapsed; {Enumerable.Range(0, campaign.Faults.Count).Sum(fault => (long)verdicts.ChecksThatCatch(fault).Count()):N0} verdicts; {mostOfCatching} MiB at most resident");
        Line(output, $"  what each fault changes: {ran.Processor:0.00} s of processor time, {ran.Elapsed:0.00} s elapsed; {changed:N0} readings");
        var other = Enumerable.Range(0, campaign.Faults.Count).Count(fault => !verdicts.ChecksThatCatch(fault).SequenceEqual(dictionary.ChecksThatCatch(fault)));
        Line(output, $"  {other} faults with other verdicts in the two");
        Line(output, $"  {most} MiB at most resident, {held} MiB held by campaign and dictionary");
        GC.KeepAlive(campaign);
    }

    private static void Line(TextWriter output, FormattableString text) => output.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
