using System.CommandLine;
using System.Globalization;
using Proveout.Journal;

namespace Proveout.Cli;

/// <summary><c>proveout builds</c>.</summary>
internal static class BuildsCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var command = new ExampleCommand("builds", "List the builds of a journal, newest first.", "proveout builds --journal workshop.db") { options.Journal, options.Json };
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var opened = await Workplace.OpenExistingAsync(options.FilesOf(parse), [], options.JournalOf(parse), cancellation);
            if (opened.Value is null)
                return terminal.Refuse(opened.Diagnostics, asJson);
            await using var workplace = opened.Value;
            Show(terminal, [.. (await workplace.Journal.ListBuildsAsync(cancellation)).Reverse()], asJson);
            return ExitCode.Fine;
        });
        return command;
    }

    private static void Show(Terminal terminal, Build[] builds, bool asJson)
    {
        if (asJson)
        {
            terminal.Show(new BuildsShape("proveout-builds 1", [.. builds.Select(BuildShape.Of)]), JsonShapes.Spread.BuildsShape);
            return;
        }

        var sheet = new Sheet("Serial", "Machine", "Builder", "Started (UTC)", "Identifier");
        foreach (var build in builds)
            sheet.Add(build.Serial, build.MachineName, build.Builder, build.Started.UtcDateTime.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture), build.Id.ToString());
        terminal.Show(sheet);
    }
}
