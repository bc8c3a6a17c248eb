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
        MachineRun.Of(command, terminal, options, async run =>
        {
            var planned = await run.PlanAsync();
            var (made, drawn, path) = (run.Parse.GetValue(mistakes) ?? [], run.Parse.GetValue(seed), run.Parse.GetValue(file));
            var rehearsed = RehearsedBuild.Readings(planned, made, drawn);
            if (rehearsed.Value is not { } readings)
                return terminal.Refuse(rehearsed.Diagnostics, run.AsJson);
            var text = ReadingsFile.Write(readings.Select(reading => (reading.CheckId, reading.Text)));
            if (path is not null && SafeFile.TryWrite(path, stream => stream.Write(Encoding.UTF8.GetBytes(text))) is { } problem)
                return terminal.Refuse([problem], run.AsJson);
            return run.Show(() => ShapeOf(planned, made, drawn, readings), JsonShapes.Spread.RehearsalShape, () => terminal.Output.Write(path is null ? text : ""));
        });
        return command;
    }

    private static RehearsalShape ShapeOf(PlannedMachine planned, string[] mistakes, int seed, IReadOnlyList<TypedReading> readings) => new(
        "proveout-rehearsal 1", planned.Machine.Design.Name, mistakes, seed, [.. readings.Select(reading => new ReadingShape(reading.CheckId, reading.Text))]);
}
