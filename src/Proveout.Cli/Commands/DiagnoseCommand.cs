using System.CommandLine;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout diagnose</c>: a machine with a file of readings, or a build of the journal.</summary>
internal static class DiagnoseCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var subject = new Argument<string>("MACHINE|BUILD") { Description = "A machine, together with --readings; or a build of the journal." };
        var readings = new Option<string?>("--readings") { Description = "A file of readings, as `proveout rehearse` writes it.", HelpName = "FILE" };
        var command = new ExampleCommand(
            "diagnose",
            "Rank the mistakes that explain all readings, and name the check worth most now.",
            "proveout diagnose samples/alderbrook --readings samples/alderbrook-as-wired/readings.txt",
            "proveout diagnose P-7")
        {
            subject, readings, options.Journal, options.Machines, options.Json,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var files = options.FilesOf(parse);
            var found = parse.GetValue(readings) is { } file
                ? await OfMachineAsync(terminal, files, Places.MachineAt(parse.GetValue(subject)!), file, cancellation)
                : await OfBuildAsync(terminal, files, options.MachinesOf(parse), options.JournalOf(parse), parse.GetValue(subject)!, cancellation);
            return found.Value is { } diagnosed ? Show(terminal, diagnosed, asJson) : terminal.Refuse(found.Diagnostics, asJson);
        });
        return command;
    }

    private static async Task<Outcome<Diagnosed>> OfMachineAsync(Terminal terminal, MachineFiles files, string path, string readings, CancellationToken cancellation)
    {
        var read = files.Read(path);
        if (read.Value is not { } machine)
            return Outcome.Refused<Diagnosed>(read.Diagnostics);
        var stored = StoredReadings.Read(readings);
        if (stored.Value is null)
            return Outcome.Refused<Diagnosed>(stored.Diagnostics);
        var planned = await Planning.RunAsync(terminal, machine, onlyGreedy: false, cancellation);
        var typed = stored.Value.Of(planned);
        return typed.Value is null
            ? Outcome.Refused<Diagnosed>(typed.Diagnostics)
            : Outcome.Of(new Diagnosed(machine.Design.Name, ReadingsDiagnosis.Of(planned, typed.Value)));
    }

    private static async Task<Outcome<Diagnosed>> OfBuildAsync(
        Terminal terminal, MachineFiles files, IReadOnlyList<string> machines, string journal, string wanted, CancellationToken cancellation)
    {
        var opened = await OpenedBuild.OpenAsync(terminal, files, machines, journal, wanted, cancellation);
        if (opened.Value is null)
            return Outcome.Refused<Diagnosed>(opened.Diagnostics);
        await using var build = opened.Value;
        var state = await build.StateAsync(cancellation);
        return Outcome.Of(new Diagnosed(state.Build.MachineName, ReadingsDiagnosis.Of(state)));
    }

    private static int Show(Terminal terminal, Diagnosed diagnosed, bool asJson)
    {
        if (asJson)
            terminal.Show(DiagnosisShape.Of(diagnosed.Machine, diagnosed.View), JsonShapes.Spread.DiagnosisShape);
        else
            DiagnosisText.Show(terminal, diagnosed.View);
        return diagnosed.View.Failed.Count > 0 ? ExitCode.Findings : ExitCode.Fine;
    }

    private sealed record Diagnosed(string Machine, DiagnosisView View);
}
