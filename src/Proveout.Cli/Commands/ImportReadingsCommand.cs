using System.CommandLine;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout import-readings MACHINE</c>.</summary>
internal static class ImportReadingsCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var readings = new Option<string>("--readings") { Description = "A file of readings, as `proveout rehearse` writes it.", HelpName = "FILE", Required = true };
        var builder = new Option<string>("--builder") { Description = "Who builds it.", HelpName = "NAME", Required = true };
        var command = new ExampleCommand(
            "import-readings",
            "Start a build in the journal with readings that were taken elsewhere.",
            "proveout import-readings samples/alderbrook --readings samples/alderbrook-as-wired/readings.txt --serial A-3 --builder \"Mara Lindt\"")
        {
            options.Machine, readings, options.Serial, builder, options.Journal, options.Json,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var started = await StartAsync(
                terminal,
                options.FilesOf(parse),
                options.MachineOf(parse),
                parse.GetValue(readings)!,
                options.JournalOf(parse),
                new StartBuild("", parse.GetValue(options.Serial) ?? "", parse.GetValue(builder)!, ""),
                cancellation);
            return started.Value is { } state ? Show(terminal, state, asJson) : terminal.Refuse(started.Diagnostics, asJson);
        });
        return command;
    }

    private static async Task<Outcome<BenchState>> StartAsync(
        Terminal terminal, MachineFiles files, string path, string readings, string journal, StartBuild start, CancellationToken cancellation)
    {
        var read = files.Read(path);
        if (read.Value is not { } machine)
            return Outcome.Refused<BenchState>(read.Diagnostics);
        var stored = StoredReadings.Read(readings);
        if (stored.Value is null)
            return Outcome.Refused<BenchState>(stored.Diagnostics);
        await using var workplace = await Workplace.OpenAsync(files, [path], journal, cancellation);
        var typed = stored.Value.Of(await Planning.RunAsync(terminal, machine, onlyGreedy: false, cancellation));
        return typed.Value is null
            ? Outcome.Refused<BenchState>(typed.Diagnostics)
            : await new ImportedReadings(workplace.Bench).StartAsync(start with { MachineId = machine.Id }, typed.Value);
    }

    private static int Show(Terminal terminal, BenchState state, bool asJson)
    {
        if (asJson)
            terminal.Show(BuildShape.Of(state.Build), JsonShapes.Spread.BuildShape);
        else
            terminal.Say($"Build {state.Build.Serial} of {state.Build.MachineName} is started ({state.Build.Id}). `proveout bench {state.Build.Serial}` goes on with it.");
        return state.Steps.Any(step => step.Status == StepStatus.Failed) ? ExitCode.Findings : ExitCode.Fine;
    }
}
