using System.CommandLine;
using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout rescue FILE</c>.</summary>
internal static class RescueCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var damaged = new Argument<string>("FILE") { Description = "The damaged journal; it is only read." };
        var target = new Option<string?>("--to") { Description = "Save what can be read into this new journal; without it, only say what can be read.", HelpName = "NEW" };
        var command = new ExampleCommand("rescue", "Say what can be read of a damaged journal, save it into a new one, and name what is lost.", "proveout rescue journal.db --to rescued.db")
        {
            damaged, target, options.Json,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            if (JournalPlace.IsDatabase(parse.GetValue(damaged)!))
                return terminal.Refuse(
                    "database-journal", JournalPlace.NameOf(parse.GetValue(damaged)!), "Only a journal in a file is read byte by byte.",
                    "`proveout verify --all` says what is damaged in a database; go back to a backup of it, or take out what is whole with `proveout export-build`.", parse.GetValue(options.Json));
            var journal = new DamagedJournal(parse.GetValue(damaged)!);
            var file = parse.GetValue(target);
            var report = file is null ? await journal.SurveyAsync(cancellation) : await journal.RescueAsync(file, cancellation);
            if (parse.GetValue(options.Json))
                terminal.Show(RescueShape.Of(report, file), JsonShapes.Spread.RescueShape);
            else
                Show(terminal, report, file);
            return report.Lost.Count == 0 && report.Builds.Count > 0 ? ExitCode.Fine : ExitCode.Findings;
        });
        return command;
    }

    /// <summary>Says what is lost, for other commands that meet a damaged journal.</summary>
    public static void ShowLost(Terminal terminal, RescueReport report)
    {
        foreach (var sentence in report.Lost)
            terminal.Say(sentence, Meaning.Bad);
        foreach (var sentence in report.Mended)
            terminal.Say(sentence);
    }

    private static void Show(Terminal terminal, RescueReport report, string? file)
    {
        if (report.Builds.Count == 0)
        {
            terminal.Say("No build can be made out in this file.", Meaning.Bad);
            return;
        }
        var sheet = new Sheet("Serial", "Entries read", "Recorded", "Identifier");
        foreach (var build in report.Builds)
            sheet.Add(build.Serial.Length > 0 ? build.Serial : "not readable", FormattableString.Invariant($"{build.Entries}"), FormattableString.Invariant($"{build.Recorded}"), build.Id);
        terminal.Show(sheet);
        ShowLost(terminal, report);
        if (report.Lost.Count == 0)
            terminal.Say("Nothing that was recorded is lost.", Meaning.Good);
        terminal.Say(file is null ? "Nothing was written; --to saves it." : $"Saved in {file}. Keep the damaged file too.");
    }
}
