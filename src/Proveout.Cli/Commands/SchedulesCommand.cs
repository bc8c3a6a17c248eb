using System.CommandLine;
using Proveout.Engine.Machine;
using Proveout.Publish.Schedules;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout schedules MACHINE</c>.</summary>
internal static class SchedulesCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var folder = new Option<string>("--out") { Description = "Folder to write to; this one when left out.", HelpName = "FOLDER", DefaultValueFactory = _ => "." };
        var reel = new Option<string>("--reel") { Description = "Length of wire on a reel.", HelpName = "LENGTH", DefaultValueFactory = _ => "25 m" };
        var pages = new Option<string>("--pages")
        {
            Description = "Address of the machine's pages, for the square codes on the labels; they hold the label's words when left out.",
            HelpName = "ADDRESS",
            DefaultValueFactory = _ => "",
        };
        var command = new ExampleCommand(
            "schedules",
            "Write what to work from on paper: parts, wires, cutting, terminations, jumpers, torques, order of work, labels.",
            "proveout schedules samples/pennywort --out paper")
        {
            options.Machine, folder, reel, pages, options.Json,
        };
        MachineRun.Of(command, terminal, options, async run =>
        {
            if (!LengthText.TryRead(run.Parse.GetValue(reel)!, out var length, out var problem))
                return terminal.Refuse([new Diagnostic("wrong-option", new("--reel", 0, 0), problem, "Give the reel's length with its unit, such as `25 m`.")], run.AsJson);
            var book = ScheduleBooks.Of(await run.PlanAsync(), length, run.Parse.GetValue(pages)!);
            return Write(terminal, book, run.Parse.GetValue(folder)!, run.AsJson);
        });
        return command;
    }

    private static int Write(Terminal terminal, ScheduleBook book, string folder, bool asJson)
    {
        var files = PaperFiles.Of(book).Select(file => (Path: Path.Combine(folder, file.Name), file.Write)).ToArray();
        var problems = files.Select(file => SafeFile.TryWrite(file.Path, file.Write)).OfType<Diagnostic>().ToArray();
        if (problems.Length > 0)
            return terminal.Refuse(problems, asJson);
        if (asJson)
            terminal.Show(SchedulesShape.Of(book), JsonShapes.Spread.SchedulesShape);
        else
            foreach (var file in files)
                terminal.Say(file.Path);
        return ExitCode.Fine;
    }
}
