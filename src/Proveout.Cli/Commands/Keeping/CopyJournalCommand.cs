using System.CommandLine;
using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout copy-journal</c>.</summary>
internal static class CopyJournalCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var from = new Option<string>("--from") { Description = "The journal that is copied; it is only read.", HelpName = "JOURNAL", Required = true };
        var to = new Option<string>("--to") { Description = "The other journal; it is made where there is none.", HelpName = "JOURNAL", Required = true };
        var goesOn = new Option<bool>("--continue") { Description = "Go on with a copy that broke off, or add what was recorded since." };
        var command = new ExampleCommand(
            "copy-journal",
            "Copy all builds, from a file to a database or back, with every chain recomputed on both sides; then work on with the new one.",
            "proveout copy-journal --from journal.db --to postgresql://workshop@server/proveout",
            "proveout copy-journal --from postgresql://workshop@server/proveout --to journal.db")
        {
            from, to, goesOn, options.Json,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var (old, young) = (parse.GetValue(from)!, parse.GetValue(to)!);
            var outcome = await new JournalCopying(TimeProvider.System).RunAsync(old, young, parse.GetValue(goesOn), cancellation);
            return outcome.Value is { } builds
                ? Show(terminal, JournalPlace.NameOf(old), JournalPlace.NameOf(young), builds, asJson)
                : terminal.Refuse(outcome.Diagnostics, asJson);
        });
        return command;
    }

    private static int Show(Terminal terminal, string from, string to, IReadOnlyList<CopiedBuild> builds, bool asJson)
    {
        if (asJson)
            terminal.Show(new JournalCopyShape("proveout-journal-copy 1", from, to, [.. builds.Select(CopiedBuildShape.Of)]), JsonShapes.Spread.JournalCopyShape);
        else
            Say(terminal, from, to, builds);
        return builds.All(build => build.IsWhole && build.GrewBy == 0) ? ExitCode.Fine : ExitCode.Findings;
    }

    private static void Say(Terminal terminal, string from, string to, IReadOnlyList<CopiedBuild> builds)
    {
        foreach (var copied in builds)
            if (!copied.IsWhole)
                terminal.Say($"{copied.Build.Serial} ({copied.Build.MachineName}): the copy is not what was copied. Do not use it; copy into a new journal.", Meaning.Bad);
            else if (copied.GrewBy > 0)
                terminal.Say(FormattableString.Invariant(
                    $"{copied.Build.Serial} ({copied.Build.MachineName}): {copied.GrewBy} entries were recorded in {from} meanwhile. Stop working there, then copy again with --continue."), Meaning.Bad);
        var entries = builds.Sum(build => build.Entries);
        terminal.Say(FormattableString.Invariant($"{to}: {builds.Count} builds with {entries} entries, {builds.Sum(build => build.Added)} of them copied now."));
        if (builds.All(build => build.IsWhole && build.GrewBy == 0))
        {
            terminal.Say($"All are whole on both sides. Work on with the new journal, and keep {from} as a backup only.", Meaning.Good);
            terminal.Say("Who may sign in is not copied with it; `proveout people take-in --from OLD --journal NEW` does that.");
        }
    }
}
