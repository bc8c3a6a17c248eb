using System.Globalization;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Shows a check plan in words and tables.</summary>
internal static class PlanText
{
    private const int MostPairs = 5;

    public static void Show(Terminal terminal, PlanView view, TriplesView? triples)
    {
        terminal.Say($"{view.Machine.Name}: {Count(view.Machine.PartCount, "part")}, {Count(view.Machine.ConductorCount, "conductor")}.");
        terminal.Say(string.Create(
            CultureInfo.InvariantCulture,
            $"{Count(view.Groups.Sum(group => group.Checks.Count), "check")} of {view.CandidateChecks} considered, about {Count((int)Math.Ceiling(view.Minutes), "minute")}; of {view.Faults} plausible mistakes they surely catch {view.Caught}."));
        terminal.Say(view.Optimality);
        terminal.Say(view.Order);
        PlanGroup? before = null;
        foreach (var group in view.Groups)
        {
            Show(terminal, group, hasNewCautions: group.SetUp.Cautions != before?.SetUp.Cautions);
            before = group;
        }

        ShowCoverage(terminal, view);
        terminal.Say(view.Isolation);
        ShowPairs(terminal, view.Pairs);
        ShowTriples(terminal, triples);
        ShowLeftToTheEye(terminal, view);
    }

    private static void Show(Terminal terminal, PlanGroup group, bool hasNewCautions)
    {
        terminal.Say();
        terminal.Say($"{group.SetUp.Title} ({Count(group.Checks.Count, "check")})");
        terminal.Warn(hasNewCautions ? group.SetUp.Cautions : []);
        foreach (var instruction in group.SetUp.Instructions)
            terminal.Say(instruction);
        var sheet = new Sheet("No.", "Red lead", "Black lead", "Meter", "Should read", "Catches");
        foreach (var check in group.Checks)
            sheet.Add(
                check.Number.ToString(CultureInfo.InvariantCulture),
                check.Check.Points[0].ToString(),
                check.Check.Points[1].ToString(),
                check.Check.Kind,
                check.Expected,
                check.Catches.ToString(CultureInfo.InvariantCulture));
        terminal.Show(sheet);
    }

    private static string Count(int count, string thing) => count == 1 ? $"1 {thing}" : string.Create(CultureInfo.InvariantCulture, $"{count} {thing}s");

    private static void ShowCoverage(Terminal terminal, PlanView view)
    {
        terminal.Say();
        terminal.Say("What the plan surely catches");
        var sheet = new Sheet("Kind of mistake", "Simulated", "Caught");
        foreach (var kind in view.Coverage)
            sheet.Add(kind.Kind, kind.Faults.ToString(CultureInfo.InvariantCulture), kind.Caught.ToString(CultureInfo.InvariantCulture));
        terminal.Show(sheet);
    }

    private static void ShowPairs(Terminal terminal, PairsView pairs)
    {
        terminal.Say();
        terminal.Say("Two mistakes made together");
        terminal.Say(pairs.Summary);
        foreach (var group in pairs.Groups.Take(MostPairs))
        {
            var alone = group.AloneSeverity > group.Severity ? $" Alone, the worse of the two: {SeverityWords.Of(group.AloneSeverity)}." : "";
            terminal.Say(string.Create(CultureInfo.InvariantCulture, $"- {group.Kinds} ({group.Count}). Together: {SeverityWords.Of(group.Severity)}.{alone} {group.Reading}"));
            terminal.Say($"  Instead: {string.Join(" ", group.OtherEvidence)}");
            terminal.Say($"  Such as: {group.Example}");
        }

        if (pairs.Groups.Count > MostPairs)
            terminal.Say(string.Create(CultureInfo.InvariantCulture, $"- and {pairs.Groups.Skip(MostPairs).Sum(group => group.Count)} pairs more, less dangerous or rarer; --json lists all."));
    }

    private static void ShowTriples(Terminal terminal, TriplesView? triples)
    {
        if (triples is null)
            return;
        terminal.Say();
        terminal.Say("Three mistakes made together");
        terminal.Say(triples.Summary);
        if (triples.Examples.Count > 0)
            terminal.Warn(triples.Cautions);
        foreach (var example in triples.Examples)
        {
            terminal.Say($"- Such as: {string.Join(" And: ", example.Mistakes)}");
            terminal.Say($"  Instead: {string.Join(" ", example.OtherEvidence)}");
        }
    }

    private static void ShowLeftToTheEye(Terminal terminal, PlanView view)
    {
        terminal.Say();
        terminal.Say(view.Uncovered.Count == 0 ? "Nothing that was simulated is left to the eye." : "Left to the eye and to other tests, worst first");
        foreach (var group in view.Uncovered)
        {
            terminal.Say($"- {group.Sentence} At worst: {SeverityWords.Of(group.Severity)}.");
            terminal.Say($"  Instead: {group.OtherEvidence}");
            terminal.Say($"  Such as: {group.Examples[0]}");
        }
    }
}
