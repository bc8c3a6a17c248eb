using System.CommandLine;
using System.Globalization;
using System.Text;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout wires export MACHINE</c> and <c>proveout wires import MACHINE LIST</c>.</summary>
internal static class WiresCommand
{
    public static Command Build(Terminal terminal, SharedOptions options) => new ExampleCommand(
        "wires",
        "Take a machine's wire list out to a spreadsheet as comma-separated values, and back in.",
        "proveout wires export samples/pennywort --out wires.csv",
        "proveout wires import my-machine wires.csv --save --person \"Mara Lindt\"")
    {
        Export(terminal, options),
        Import(terminal, options),
    };

    private static ExampleCommand Export(Terminal terminal, SharedOptions options)
    {
        var target = new Option<string?>("--out") { Description = "The list; it is shown when left out.", HelpName = "FILE" };
        var command = new ExampleCommand("export", "Write every conductor as a line of comma-separated values.", "proveout wires export samples/pennywort --out wires.csv")
        {
            options.Machine, target, options.Json,
        };
        command.SetAction(parse =>
        {
            var (desk, id, problems) = Open(options, parse);
            var (asJson, file) = (parse.GetValue(options.Json), parse.GetValue(target));
            if (desk.Wires(id) is not { } list)
                return terminal.Refuse(problems, asJson);
            if (file is not null && SafeFile.TryWrite(file, stream => stream.Write(Encoding.UTF8.GetBytes(list))) is { } problem)
                return terminal.Refuse([problem], asJson);
            var wires = desk.View(id)!.Design.Conductors.Count;
            if (asJson)
                terminal.Show(new WireListShape("proveout-wire-list 1", id, wires, file ?? ""), JsonShapes.Spread.WireListShape);
            else if (file is not null)
                terminal.Say(string.Create(CultureInfo.InvariantCulture, $"{file}: {wires} wires."));
            else
                foreach (var line in list.Split("\r\n", StringSplitOptions.RemoveEmptyEntries))
                    terminal.Say(line);
            return ExitCode.Fine;
        });
        return command;
    }

    private static ExampleCommand Import(Terminal terminal, SharedOptions options)
    {
        var source = new Argument<string>("LIST") { Description = "A wire list, as `export` writes it; columns may be left out." };
        var remove = new Option<bool>("--remove-unlisted") { Description = "Take out conductors that are not in the list." };
        var save = new Option<bool>("--save") { Description = "Save the changes as a revision; without it they are only shown." };
        var person = new Option<string>("--person") { Description = "Who saves.", HelpName = "NAME", DefaultValueFactory = _ => "" };
        var command = new ExampleCommand(
            "import",
            "Show what a wire list changes in a machine, and save it when asked.",
            "proveout wires import my-machine wires.csv",
            "proveout wires import my-machine wires.csv --save --person \"Mara Lindt\"")
        {
            options.Machine, source, remove, save, person, options.Json,
        };
        command.SetAction(parse =>
        {
            var asJson = parse.GetValue(options.Json);
            var (desk, id, problems) = Open(options, parse);
            var list = TextFiles.Read(parse.GetValue(source));
            if (problems.Count > 0 || list.Text is null)
                return terminal.Refuse([.. problems, .. list.Problem is null ? [] : new[] { list.Problem }], asJson);
            var seen = desk.View(id)!.Revision;
            var look = desk.LookAtWires(id, list.Text, parse.GetValue(remove));
            if (look.Value is not { } import)
                return terminal.Refuse(look.Diagnostics, asJson);
            var answer = parse.GetValue(save) ? desk.Save(id, new SaveEdits(seen, import.Edits, parse.GetValue(person)!)) : new SaveAnswer(seen, [], []);
            return answer.IsSaved ? Show(terminal, id, import, answer.Revision, parse.GetValue(save), asJson) : terminal.Refuse(ProblemsOf(answer), asJson);
        });
        return command;
    }

    private static int Show(Terminal terminal, string id, WireImport import, int revision, bool isSaved, bool asJson)
    {
        if (asJson)
        {
            terminal.Show(WireImportShape.Of(id, import, isSaved ? revision : 0), JsonShapes.Spread.WireImportShape);
            return ExitCode.Fine;
        }

        foreach (var change in import.Changes)
            terminal.Say(change.Sentence);
        terminal.Say(string.Create(
            CultureInfo.InvariantCulture,
            $"{import.Changed.Count} changed, {import.Added.Count} added, {import.Removed.Count} taken out, {import.Unlisted.Count} not in the list and left as they are."));
        terminal.Say(isSaved ? string.Create(CultureInfo.InvariantCulture, $"Saved as revision {revision}.") : "Nothing is saved; `--save` saves it.");
        return ExitCode.Fine;
    }

    private static (EditDesk Desk, string Id, IReadOnlyList<Diagnostic> Problems) Open(SharedOptions options, ParseResult parse)
    {
        var (files, path) = (options.FilesOf(parse), options.MachineOf(parse));
        var shelf = new MachineShelf(files, [path]);
        var desk = new EditDesk(files, shelf, new EditPlaces(Places.OwnMachinesBeside(Places.Journal), Places.Samples), TimeProvider.System);
        return shelf.Machines is [var machine, ..] ? (desk, machine.Id, []) : (desk, "", files.Read(path).Diagnostics);
    }

    private static IReadOnlyList<Diagnostic> ProblemsOf(SaveAnswer answer) => answer.Problems.Count > 0 ? answer.Problems :
    [
        .. answer.Conflicts.Select(conflict => new Diagnostic(
            "changed-meanwhile", new("editor", 0, 0), $"Somebody changed {conflict.Thing} meanwhile: {conflict.Theirs}.", "Look at the list again, and import it anew.")),
    ];
}
