using System.CommandLine;
using System.Net;
using Proveout.Engine.Machine;
using Proveout.Web;
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
        var log = new Option<string?>("--log")
        {
            Description = "Tell of start, stop and each request on the error stream: `plain` for a person, `json` for a program; only what goes wrong when left out.",
            HelpName = "SHAPE",
        };
        log.AcceptOnlyFromAmong("plain", "json");
        var metrics = new Option<bool>("--metrics") { Description = "Count and measure, and tell at /metrics to programs on this computer (docs/operation.md)." };
        var opening = new OpeningOptions();
        var meter = new Option<string?>("--meter")
        {
            Description = "A meter on the network that speaks SCPI over TCP; the page of a check then offers to take the reading from it.",
            HelpName = "HOST:PORT",
        };
        meter.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && MeterAddress.TryRead(result.Tokens[0].Value) is null)
                result.AddError($"`{result.Tokens[0].Value}` is not the address of a meter. Give its name or number and its port, such as 192.168.1.40:5025.");
        });
        var command = new ExampleCommand(
            "serve",
            "Serve the bench as pages for a browser on this computer, or behind a sign-in for others too; the first line printed is its address.",
            "proveout serve samples/alderbrook --port 8015",
            "proveout serve samples/alderbrook --port 8015 --address 0.0.0.0 --name bench.local --certificate bench.pfx",
            "proveout serve --port 8015 --journal /var/lib/proveout/journal.db --log json --metrics")
        {
            machines, port, options.Journal, log, metrics, meter,
        };
        opening.AddTo(command);
        command.MindsSignals = true;
        command.SetAction((parse, cancellation) => RunAsync(
            terminal,
            options.FilesOf(parse),
            parse.GetValue(machines) is { Length: > 0 } given ? [.. given.Select(Places.MachineAt)] : Places.SampleMachines,
            options.JournalOf(parse),
            new BenchHostOptions
            {
                Port = parse.GetValue(port),
                Log = ShapeOf(parse.GetValue(log)),
                Metrics = parse.GetValue(metrics),
                Meter = parse.GetValue(meter) is { } address ? MeterAddress.TryRead(address) : null,
            },
            opening.Of(parse),
            cancellation));
        return command;
    }

    /// <summary>Serves the samples on a free port.</summary>
    public static Task<int> RunWithDefaultsAsync(Terminal terminal, MachineFiles files, CancellationToken cancellation) =>
        RunAsync(terminal, files, Places.SampleMachines, Places.Journal, new BenchHostOptions(), Outcome.Of(new OpeningWords(IPAddress.Loopback, [], [], null, null)), cancellation);

    private static async Task<int> RunAsync(
        Terminal terminal, MachineFiles files, IReadOnlyList<string> machines, string journal, BenchHostOptions host, Outcome<OpeningWords> opening, CancellationToken cancellation)
    {
        var diagnostics = machines.SelectMany(machine => files.Read(machine).Diagnostics).ToArray();
        if (diagnostics.Length > 0)
            return terminal.Refuse(diagnostics);
        if (opening.Value is not { } words)
            return terminal.Refuse(opening.Diagnostics);
        await using var workplace = await Workplace.OpenAsync(files, machines, journal, cancellation);
        return await BenchServing.RunAsync(terminal, workplace, host, words, AccessKeeping.In(workplace.Journal) ?? AccessKeeping.Beside(journal), cancellation);
    }

    private static LogShape ShapeOf(string? word) => word switch
    {
        "plain" => LogShape.Plain,
        "json" => LogShape.Json,
        _ => LogShape.OnlyTrouble,
    };
}
