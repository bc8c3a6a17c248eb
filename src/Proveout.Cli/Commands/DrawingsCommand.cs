using System.CommandLine;
using System.Text;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout drawings MACHINE</c>.</summary>
internal static class DrawingsCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var folder = new Option<string>("--out") { Description = "Folder to write to; this one when left out.", HelpName = "FOLDER", DefaultValueFactory = _ => "." };
        var wire = new Option<string?>("--wire") { Description = "Draw this wire from end to end instead.", HelpName = "WIRE" };
        var command = new ExampleCommand(
            "drawings",
            "Draw a machine: schematic, surfaces to scale, each part with what lands on it; or one wire from end to end.",
            "proveout drawings samples/alderbrook --out drawings")
        {
            options.Machine, folder, wire, options.Json,
        };
        MachineRun.Of(command, terminal, options, run =>
        {
            var sheets = run.Parse.GetValue(wire) is { } id ? MachineDrawings.OfWire(run.Machine.Design, id) : MachineDrawings.Of(run.Machine.Design);
            if (sheets.Count == 0)
                return Task.FromResult(terminal.Refuse(
                    [new Diagnostic("unknown-wire", new("--wire", 0, 0), "The machine has no such wire.", "Give the identifier of one of its conductors, such as `W1`.")], run.AsJson));
            string[] files = [.. sheets.Select(sheet => Path.Combine(run.Parse.GetValue(folder)!, $"{sheet.Name}.svg"))];
            var problems = sheets.Zip(files, (sheet, file) => SafeFile.TryWrite(file, stream => stream.Write(Encoding.UTF8.GetBytes(sheet.Svg)))).OfType<Diagnostic>().ToArray();
            return Task.FromResult(problems.Length > 0
                ? terminal.Refuse(problems, run.AsJson)
                : run.Show(() => new DrawingsShape("proveout-drawings 1", run.Machine.Design.Name, files), JsonShapes.Spread.DrawingsShape, () => Say(terminal, files)));
        });
        return command;
    }

    private static void Say(Terminal terminal, IEnumerable<string> files)
    {
        foreach (var file in files)
            terminal.Say(file);
    }
}
