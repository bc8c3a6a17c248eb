using System.CommandLine;
using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout backup FILE</c>.</summary>
internal static class BackupCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var target = new Argument<string>("FILE") { Description = "The backup; nothing may be there." };
        var command = new ExampleCommand("backup", "Copy a journal while it is in use, and recompute every chain of the copy.", "proveout backup /media/stick/journal-2031-03-14.db")
        {
            target, options.Journal, options.Json,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var journal = options.JournalOf(parse);
            if (JournalPlace.IsDatabase(journal))
                return terminal.Refuse(
                    "database-journal", JournalPlace.NameOf(journal), "A journal in a database is backed up with PostgreSQL's own tools.",
                    "Use pg_dump, or take a copy as a file: `proveout copy-journal --from ADDRESS --to FILE`.", asJson);
            return File.Exists(journal)
                ? Show(terminal, parse.GetValue(target)!, await new JournalCopies(TimeProvider.System).BackUpAsync(journal, parse.GetValue(target)!, cancellation), asJson)
                : terminal.Refuse("no-journal", journal, "There is no journal here.", "Give the path of one with --journal.", asJson);
        });
        return command;
    }

    private static int Show(Terminal terminal, string file, IReadOnlyList<BuildVerdict> verdicts, bool asJson)
    {
        if (asJson)
            terminal.Show(new BackupShape("proveout-backup 1", file, [.. verdicts.Select(BuildVerdictShape.Of)]), JsonShapes.Spread.BackupShape);
        else
        {
            terminal.Say($"{file}: {verdicts.Count} builds. `proveout restore` puts it in the place of a journal.");
            foreach (var broken in verdicts.Where(verdict => !verdict.IsWhole))
                terminal.Say($"{broken.Build.Serial} ({broken.Build.MachineName}): {broken.Sentence}", Meaning.Bad);
        }
        return verdicts.All(verdict => verdict.IsWhole) ? ExitCode.Fine : ExitCode.Findings;
    }
}
