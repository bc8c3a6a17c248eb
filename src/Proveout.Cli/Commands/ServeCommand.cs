using System.CommandLine;
using System.Net;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout serve</c>, and <c>proveout</c> alone.</summary>
internal static class ServeCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var machines = new Argument<string[]>("MACHINE")
        {
            Description = "Machine files or folders; the samples when left out.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var port = new Option<int>("--port") { Description = "Port on this computer, 1 to 65535; a free one when left out.", HelpName = "N" };
        port.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && int.TryParse(result.Tokens[0].Value, out var number) && number is < 0 or > 65535)
                result.AddError($"`{number}` is not a port. Give a number from 1 to 65535.");
        });
        var opening = new OpeningOptions();
        var command = new ExampleCommand(
            "serve",
            "Serve the bench as pages for a browser on this computer, or behind a sign-in for others too; the first line printed is its address.",
            "proveout serve samples/alderbrook --port 8015",
            "proveout serve samples/alderbrook --port 8015 --address 0.0.0.0 --name bench.local --certificate bench.pfx")
        {
            machines, port, options.Journal,
        };
        opening.AddTo(command);
        command.SetAction((parse, cancellation) => RunAsync(
            terminal,
            options.FilesOf(parse),
            parse.GetValue(machines) is { Length: > 0 } given ? [.. given.Select(Places.MachineAt)] : Places.SampleMachines,
            options.JournalOf(parse),
            parse.GetValue(port),
            opening.Of(parse),
            cancellation));
        return command;
    }

    /// <summary>Serves the samples on a free port.</summary>
    public static Task<int> RunWithDefaultsAsync(Terminal terminal, MachineFiles files, CancellationToken cancellation) =>
        RunAsync(terminal, files, Places.SampleMachines, Places.Journal, 0, Outcome.Of(new OpeningWords(IPAddress.Loopback, [], [], null, null)), cancellation);

    private static async Task<int> RunAsync(
        Terminal terminal, MachineFiles files, IReadOnlyList<string> machines, string journal, int port, Outcome<OpeningWords> opening, CancellationToken cancellation)
    {
        var diagnostics = machines.SelectMany(machine => files.Read(machine).Diagnostics).ToArray();
        if (diagnostics.Length > 0)
            return terminal.Refuse(diagnostics);
        if (opening.Value is not { } words)
            return terminal.Refuse(opening.Diagnostics);
        await using var workplace = await Workplace.OpenAsync(files, machines, journal, cancellation);
        return await BenchServing.RunAsync(terminal, workplace, port, words, AccessStore.Beside(journal), cancellation);
    }
}
