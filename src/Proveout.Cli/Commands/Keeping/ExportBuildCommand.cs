using System.CommandLine;
using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout export-build BUILD</c>.</summary>
internal static class ExportBuildCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var target = new Option<string>("--to") { Description = "The archive.", HelpName = "FILE", Required = true };
        var command = new ExampleCommand(
            "export-build", "Write the whole record of a build, with its files and seals, as one open archive.", "proveout export-build P-7 --to p-7.zip")
        {
            options.Build, target, options.Journal, options.Json,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var opened = await Workplace.OpenExistingAsync(options.FilesOf(parse), [], options.JournalOf(parse), cancellation);
            if (opened.Value is null)
                return terminal.Refuse(opened.Diagnostics, asJson);
            await using var workplace = opened.Value;
            var found = await new BuildSearch(workplace.Journal).FindAsync(parse.GetValue(options.Build)!, cancellation);
            if (found.Value is not { } build)
                return terminal.Refuse(found.Diagnostics, asJson);
            var record = await new BuildTransfer(workplace.Journal).ExportAsync(build, cancellation);
            return Write(terminal, record, parse.GetValue(target)!, asJson);
        });
        return command;
    }

    private static int Write(Terminal terminal, BuildRecord record, string file, bool asJson)
    {
        if (SafeFile.TryWrite(file, stream => BuildArchive.Write(record, stream)) is { } problem)
            return terminal.Refuse([problem], asJson);
        if (asJson)
            terminal.Show(
                new TransferShape("proveout-transfer 1", file, BuildShape.Of(record.Build), record.Entries, 0, record.LastHash), JsonShapes.Spread.TransferShape);
        else
            terminal.Say($"{file}: build {record.Build.Serial} with {record.Entries} entries, up to hash {record.LastHash}.");
        return ExitCode.Fine;
    }
}
