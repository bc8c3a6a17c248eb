using System.CommandLine;
using System.Text;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout rehearse MACHINE</c>.</summary>
internal static class RehearseCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var mistakes = new Option<string[]?>("--mistake")
        {
            Description = "Identifier of a mistake, as `proveout plan MACHINE --json --network` lists them; may be given several times.",
            HelpName = "ID",
        };
        var seed = new Option<int>("--seed") { Description = "Equal seeds draw equal readings.", HelpName = "N", DefaultValueFactory = _ => 1 };
        var file = new Option<string?>("--out") { Description = "File to write; the output when left out.", HelpName = "FILE" };
        var command = new ExampleCommand(
            "rehearse",
            "Draw the readings that a build with certain mistakes would show, for practice and for tests.",
            "proveout rehearse samples/pennywort --mistake end-on-neighbour:W43:A1.STOP1-0V:A1.STOP1-V --seed 7 --out readings.txt")
        {
            options.Machine, mistakes, seed, file, options.Json,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var read = options.FilesOf(parse).Read(options.MachineOf(parse));
            if (read.Value is not { } machine)
                return terminal.Refuse(read.Diagnostics, asJson);
            var planned = await Planning.RunAsync(terminal, machine, onlyGreedy: false, cancellation);
            var rehearsed = RehearsedBuild.Readings(planned, parse.GetValue(mistakes) ?? [], parse.GetValue(seed));
            if (rehearsed.Value is not { } readings)
                return terminal.Refuse(rehearsed.Diagnostics, asJson);
            var text = ReadingsFile.Write(readings.Select(reading => (reading.CheckId, reading.Text)));
            if (parse.GetValue(file) is { } path && SafeFile.TryWrite(path, stream => stream.Write(Encoding.UTF8.GetBytes(text))) is { } problem)
                return terminal.Refuse([problem], asJson);
            if (asJson)
                terminal.Show(ShapeOf(planned, parse.GetValue(mistakes) ?? [], parse.GetValue(seed), readings), JsonShapes.Spread.RehearsalShape);
            else if (parse.GetValue(file) is null)
                terminal.Output.Write(text);
            return ExitCode.Fine;
        });
        return command;
    }

    private static RehearsalShape ShapeOf(PlannedMachine planned, string[] mistakes, int seed, IReadOnlyList<TypedReading> readings) => new(
        "proveout-rehearsal 1", planned.Machine.Design.Name, mistakes, seed, [.. readings.Select(reading => new ReadingShape(reading.CheckId, reading.Text))]);
}
