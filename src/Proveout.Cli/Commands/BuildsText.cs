using System.Globalization;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Prints the builds of a machine side by side.</summary>
internal static class BuildsText
{
    public static void Show(Terminal terminal, MachineBuilds builds, IReadOnlyList<BuildRow> rows, IReadOnlyList<CheckSpread> spreads)
    {
        terminal.Say(string.Create(
            CultureInfo.InvariantCulture,
            $"{builds.Machine.Name}: {builds.Count} builds, {builds.Complete} with every check done, {builds.SignedOff} signed, {builds.OtherRevisions} from another revision of the machine file."));
        terminal.Say();
        terminal.Say("Readings that stand out from their sisters");
        if (builds.ApartCount == 0)
            terminal.Say("None.");
        foreach (var reading in builds.Apart)
            terminal.Say($"{reading.CheckTitle}: {reading.Sentence}");
        if (builds.ApartCount > builds.Apart.Count)
            terminal.Say(string.Create(CultureInfo.InvariantCulture, $"{builds.ApartCount - builds.Apart.Count} more stand out by less."));
        terminal.Say();
        Checks(terminal, spreads);
        terminal.Say();
        Mistakes(terminal, builds);
        terminal.Say();
        Builds(terminal, rows);
        foreach (var sentence in builds.Unreadable)
            terminal.Say($"Cannot be read: {sentence}");
    }

    private static void Checks(Terminal terminal, IReadOnlyList<CheckSpread> spreads)
    {
        var sheet = new Sheet("Check", "Should read", "Read by", "Over range", "Median and spread", "Failed in", "Stand out");
        foreach (var spread in spreads)
            sheet.Add(spread.Check.Title, spread.Expected, Number(spread.Builds), Number(spread.OverRange), spread.SpreadWords, Number(spread.Failed), spread.Told);
        terminal.Show(sheet);
    }

    private static void Mistakes(Terminal terminal, MachineBuilds builds)
    {
        var sheet = new Sheet("Mistakes found in", "Most often");
        foreach (var mistake in builds.Mistakes)
            sheet.Add(string.Create(CultureInfo.InvariantCulture, $"{mistake.Builds} builds"), mistake.Sentence);
        if (builds.Mistakes.Count > 0)
            terminal.Show(sheet);
        terminal.Say("Learned from all builds of this journal");
        foreach (var sentence in builds.Learned)
            terminal.Say(sentence);
    }

    private static void Builds(Terminal terminal, IReadOnlyList<BuildRow> rows)
    {
        var sheet = new Sheet("Serial", "Builder", "Done", "Failing", "Stand out", "Mistakes", "Deviations", "Last entry (UTC)");
        foreach (var row in rows)
            sheet.Add(
                row.Build.Serial,
                row.Build.Builder,
                string.Create(CultureInfo.InvariantCulture, $"{row.Done} of {row.Planned}{(row.IsSigned ? ", signed" : "")}"),
                Number(row.Failing),
                Number(row.Apart),
                Number(row.Mistakes),
                Number(row.Deviations),
                row.LastEntry.UtcDateTime.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture));
        terminal.Show(sheet);
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
