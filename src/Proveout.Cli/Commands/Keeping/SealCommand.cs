using System.CommandLine;
using System.Text;
using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout seal BUILD</c>.</summary>
internal static class SealCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var keyFile = new Option<string>("--key") { Description = "The private key, as `proveout seal-key` makes it.", HelpName = "FILE", Required = true };
        var person = new Option<string>("--person") { Description = "Whose key it is.", HelpName = "NAME", Required = true };
        var target = new Option<string?>("--to") { Description = "Write the seal to this file too: keep it where nobody who can write the journal can.", HelpName = "FILE" };
        var command = new ExampleCommand(
            "seal", "Sign how far the record of a build has come, so that any change to it shows.", "proveout seal P-7 --key workshop.key --person \"Mara Lindt\" --to p-7.seal.json")
        {
            options.Build, keyFile, person, target, options.Journal, options.Json,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var read = TextFiles.Read(parse.GetValue(keyFile));
            if (read.Problem is { } problem)
                return terminal.Refuse([problem], asJson);
            using var key = SealKey.FromPem(read.Text!.Text);
            if (key is null)
                return terminal.Refuse("no-key", read.Text.Name, "There is no private key over P-256 in the file.", "Give the file that `proveout seal-key` made, not the one that ends in .pub.", asJson);
            var opened = await Workplace.OpenExistingAsync(options.FilesOf(parse), [], options.JournalOf(parse), cancellation);
            if (opened.Value is null)
                return terminal.Refuse(opened.Diagnostics, asJson);
            await using var workplace = opened.Value;
            var found = await new BuildSearch(workplace.Journal).FindAsync(parse.GetValue(options.Build)!, cancellation);
            return found.Value is { } build
                ? Show(terminal, await workplace.Journal.SealAsync(build.Id, key, parse.GetValue(person)!, cancellation), parse.GetValue(target), asJson)
                : terminal.Refuse(found.Diagnostics, asJson);
        });
        return command;
    }

    private static int Show(Terminal terminal, Seal seal, string? file, bool asJson)
    {
        if (file is not null && SafeFile.TryWrite(file, stream => stream.Write(Encoding.UTF8.GetBytes(SealText.Write(seal)))) is { } problem)
            return terminal.Refuse([problem], asJson);
        if (asJson)
            terminal.Show(
                new SealingShape("proveout-sealing 1", seal.BuildId.ToString(), seal.Entries, seal.Hash, seal.Sealed, seal.Person, file), JsonShapes.Spread.SealingShape);
        else
            terminal.Say($"Sealed: {seal.Entries} entries, up to hash {seal.Hash}.{(file is null ? " Write that hash down elsewhere, or use --to." : $" The seal is in {file}: keep it elsewhere.")}");
        return ExitCode.Fine;
    }
}
