using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Benchmarks;

/// <summary>Where the seconds of a plan go, step by step as <c>proveout plan</c> takes them, and those of the order of energising after it.</summary>
internal static class PlanSpeed
{
    private const int Turns = 3;

    /// <summary>Prints processor and elapsed seconds of each step for a sample; the first turn compiles.</summary>
    public static void Print(TextWriter output, IReadOnlyList<string> more)
    {
        var design = Flagship.Sample(more is [var name, ..] ? name : "alderbrook");
        for (var turn = 0; turn < Turns; turn++)
        {
            output.WriteLine(turn == 0 ? $"{design.Name}, compiling:" : $"{design.Name}, compiled:");
            PrintTurn(output, design);
        }
    }

    private static void PrintTurn(TextWriter output, MachineDesign design)
    {
        var campaign = Time(output, "prepare", () => new WiringCampaign(design));
        var dead = Time(output, "dead campaign", () => campaign.RunVerdicts());
        var model = new LiveModel(campaign.Context);
        var consequences = Time(output, "live model", () => new LiveConsequences(model));
        var worst = Time(output, "what each fault does live", () => consequences.OfAll(campaign.Faults, CancellationToken.None));
        var dictionary = dead.WithFaults([.. dead.Faults.Zip(worst, (fault, found) => fault with { Severity = found.Severity, Consequence = found.Sentence })]);
        var interactions = Time(output, "tables for pairs", () => new WiringInteractions(campaign));
        var together = new PairConsequences(consequences, campaign.Faults, dictionary);
        var (plan, report) = Grow(output, dictionary, interactions, together);
        Time(output, $"what {report.Masked.Count} masked pairs do live, for the words", () =>
        {
            foreach (var pair in report.Masked)
                together.Of(pair.One, pair.Two);
            return report;
        });
        Time(output, "order of energising", () => EnergisingOrder.Of(model, consequences, campaign.Faults, plan.Caught));
    }

    private static (CheckPlan Plan, PairReport Report) Grow(TextWriter output, FaultDictionary dictionary, WiringInteractions wiring, PairConsequences together)
    {
        var interactions = new RememberedInteractions(wiring);
        List<int[]> demands = [];
        while (true)
        {
            var plan = Time(output, $"plan with {demands.Count} demands", () => CheckPlan.Of(dictionary, onlyGreedy: false, demands));
            var report = Time(output, "pairs on it", () => new PairCampaign(dictionary, plan, interactions, together.WorstOf, beyondPlan: false).Run());
            if (report.AlsoCatch is not { Count: > 0 } lacking)
                return (plan, report);
            demands.AddRange(lacking);
        }
    }

    private static T Time<T>(TextWriter output, string step, Func<T> make)
    {
        T made = default!;
        var (processor, elapsed) = ProcessorTime.Of(1, () => made = make());
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {step,-50} {processor,8:0.00} s ({elapsed:0.00} s)"));
        return made;
    }
}
