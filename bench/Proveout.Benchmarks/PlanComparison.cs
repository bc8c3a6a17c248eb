using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Benchmarks;

/// <summary>Prints how long plans take to choose and to order, how far they are proved, and what their order saves, on machines of growing size.</summary>
internal static class PlanComparison
{
    public static void Print(TextWriter output)
    {
        Print(output, "flagship", Flagship.Read());
        foreach (var terminals in new[] { 500, 2_000 })
            Print(output, string.Create(CultureInfo.InvariantCulture, $"generated, {terminals} terminals"), GeneratedMachine.Of(Flagship.Catalogue(), terminals));
    }

    private static void Print(TextWriter output, string name, MachineDesign design)
    {
        var dictionary = new WiringCampaign(design).Run();
        Line(output, $"{name}: {dictionary.Faults.Count} faults, {dictionary.Checks.Count} checks in {dictionary.SetUps.Count} set-ups");
        foreach (var onlyGreedy in new[] { true, false })
        {
            CheckPlan? plan = null;
            var time = ProcessorTime.Of(1, () => plan = CheckPlan.Of(dictionary, onlyGreedy));
            Line(output, $"  {plan!.Choice.Method}: {time.Elapsed:0.00} s elapsed ({time.Processor:0.00} s of processor time)");
            Line(output, $"    {plan.Checks.Count} checks, {plan.Choice.CostSeconds:0} s, not under {plan.Choice.LowerBoundSeconds:0} s, gap {plan.Choice.Gap:0.00 %}; {plan.Choice.Size}");
            Line(output, $"    in order {plan.Order.Time.Seconds:0} s, not under {plan.Order.LowerBoundSeconds:0} s, gap {plan.Order.Gap:0.00 %}; {plan.Order.Time}");
        }
    }

    private static void Line(TextWriter output, FormattableString text) => output.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
