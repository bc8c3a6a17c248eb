using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Benchmarks;

/// <summary>Prints how long plans take to choose and to order, how far they are proved, and what their order saves, on machines of growing size.</summary>
internal static class PlanComparison
{
    public static void Print(TextWriter output)
    {
        Print(output, "flagship", new WiringCampaign(Flagship.Read()).Run());
        foreach (var (faults, checks) in new[] { (2_000, 1_800), (8_000, 7_000), (40_000, 35_000) })
            Print(output, "scattered", ScatteredDictionary.Of(faults, checks, seed: 1));
        foreach (var terminals in new[] { 500, 2_000 })
            Print(output, Named($"generated, {terminals} terminals"), new WiringCampaign(GeneratedMachine.Of(Flagship.Catalogue(), terminals)).Run());
    }

    private static void Print(TextWriter output, string name, FaultDictionary dictionary)
    {
        output.WriteLine(Named($"{name}: {dictionary.Faults.Count} faults, {dictionary.Checks.Count} checks in {dictionary.SetUps.Count} set-ups"));
        foreach (var onlyGreedy in new[] { true, false })
        {
            PlanChoice? choice = null;
            var choosing = ProcessorTime.Of(1, () => choice = Planner.Choose(dictionary, onlyGreedy));
            output.WriteLine(Named($"  {choice!.Method}: {choosing.Elapsed:0.00} s elapsed ({choosing.Processor:0.00} s of processor time), {choice.Checks.Count} checks, {choice.CostSeconds:0} s, not under {choice.LowerBoundSeconds:0} s, gap {choice.Gap:0.00 %}"));
            output.WriteLine(Named($"    {choice.Size}"));
            if (onlyGreedy)
                continue;
            BenchOrder? order = null;
            var ordering = ProcessorTime.Of(1, () => order = BenchOrder.Of(dictionary, choice.Checks));
            output.WriteLine(Named($"  ordered: {ordering.Elapsed:0.00} s elapsed ({ordering.Processor:0.00} s of processor time), {order!.Time.Seconds:0} s, not under {order.LowerBoundSeconds:0} s, gap {order.Gap:0.00 %}"));
            output.WriteLine(Named($"    {order.Time}"));
        }
    }

    private static string Named(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
