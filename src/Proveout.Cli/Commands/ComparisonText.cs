using System.Globalization;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>A comparison in words.</summary>
internal static class ComparisonText
{
    public static void Show(Terminal terminal, RevisionComparison comparison, IReadOnlyList<RecordedReading> recorded)
    {
        if (comparison.Changes.Count == 0)
            terminal.Say("Nothing differs.");
        foreach (var change in comparison.Changes)
            terminal.Say(change.Sentence);
        foreach (var tug in comparison.Tugs)
            terminal.Say(tug.Sentence);
        Checks(terminal, "To do again", comparison.Checks.Where(check => check.Standing == CheckStanding.Repeat));
        Checks(terminal, "New checks", comparison.Checks.Where(check => check.Standing == CheckStanding.New));
        Checks(terminal, "No longer there", comparison.Gone);
        Readings(terminal, recorded);
        var valid = comparison.Checks.Count(check => check.Standing == CheckStanding.StillHolds);
        terminal.Say(string.Create(
            CultureInfo.InvariantCulture,
            $"Of {comparison.Checks.Count} checks of the new plan {valid} readings still hold, once the joints above are tugged. One new mistake is reckoned with at a time; whoever doubts repeats."));
    }

    private static void Checks(Terminal terminal, string title, IEnumerable<ComparedCheck> checks)
    {
        foreach (var (index, check) in checks.Index())
        {
            if (index == 0)
                terminal.Say($"{title}:");
            terminal.Say($"  {check.Check.Title} ({check.Check.SetUp}). {check.Reason}");
        }
    }

    private static void Readings(Terminal terminal, IReadOnlyList<RecordedReading> recorded)
    {
        foreach (var (index, reading) in recorded.Index())
        {
            if (index == 0)
                terminal.Say("Readings on record:");
            terminal.Say($"  {reading.Step.Check.Title}: {reading.Step.ReadingShown}. {WordOf(reading.Compared.Standing)} {reading.Compared.Reason}");
        }
    }

    private static string WordOf(CheckStanding standing) => standing switch
    {
        CheckStanding.StillHolds => "Still holds.",
        CheckStanding.Repeat => "Read again.",
        _ => "No longer needed.",
    };
}
