using System.CommandLine;
using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout import-build FILE</c>.</summary>
internal static class ImportBuildCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var archive = new Argument<string>("FILE") { Description = "An archive, as `proveout export-build` writes it." };
        var command = new ExampleCommand(
            "import-build", "Take the record of a build in from an archive, as it was written; what is there already is not taken twice.", "proveout import-build p-7.zip")
        {
            archive, options.Journal, options.Json,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var file = parse.GetValue(archive)!;
            try
            {
                await using var stream = File.OpenRead(file);
                var record = BuildTransfer.Read(stream);
                await using var workplace = await Workplace.OpenAsync(options.FilesOf(parse), [], options.JournalOf(parse), cancellation);
                return Show(terminal, file, await new BuildTransfer(workplace.Journal).ImportAsync(record, cancellation), asJson);
            }
            catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
            {
                return terminal.Refuse("unreadable-file", file, "The file cannot be read.", "See that the path is right and that you may read it.", asJson);
            }
        });
        return command;
    }

    private static int Show(Terminal terminal, string file, Admitted admitted, bool asJson)
    {
        var entries = admitted.WereThere + admitted.Added;
        if (asJson)
            terminal.Show(
                new TransferShape("proveout-transfer 1", file, BuildShape.Of(admitted.Build), entries, admitted.Added, admitted.LastHash), JsonShapes.Spread.TransferShape);
        else
            terminal.Say(
                admitted.Added == 0
                    ? $"Build {admitted.Build.Serial} of {admitted.Build.MachineName} was there already, with all {entries} entries of the archive."
                    : $"Build {admitted.Build.Serial} of {admitted.Build.MachineName}: {admitted.Added} entries were taken in, {admitted.WereThere} were there already.");
        return ExitCode.Fine;
    }
}
