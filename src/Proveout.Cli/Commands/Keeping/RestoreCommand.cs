using System.CommandLine;
using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout restore FILE</c>.</summary>
internal static class RestoreCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var backup = new Argument<string>("FILE") { Description = "A backup, as `proveout backup` makes it." };
        var command = new ExampleCommand(
            "restore", "Put a backup in the place of a journal that is not there; it is refused unless every chain of it is whole.", "proveout restore /media/stick/journal-2031-03-14.db")
        {
            backup, options.Journal, options.Json,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            var journal = options.JournalOf(parse);
            if (JournalPlace.IsDatabase(journal))
                return terminal.Refuse(
                    "database-journal", JournalPlace.NameOf(journal), "A backup of a file is restored as a file.",
                    "Restore it to a path, then `proveout copy-journal --from FILE --to ADDRESS`.", parse.GetValue(options.Json));
            var builds = await new JournalCopies(TimeProvider.System).RestoreAsync(parse.GetValue(backup)!, journal, cancellation);
            if (parse.GetValue(options.Json))
                terminal.Show(new RestoreShape("proveout-restore 1", journal, [.. builds.Select(BuildShape.Of)]), JsonShapes.Spread.RestoreShape);
            else
                terminal.Say($"{journal}: {builds.Count} builds, all whole.", Meaning.Good);
            return ExitCode.Fine;
        });
        return command;
    }
}
