using System.CommandLine;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout settings MACHINE</c>: everything that the controllers have to be told, in words of the trade.</summary>
internal static class SettingsCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var build = new Option<string?>("--build") { Description = "A build of the machine: what was measured on it takes the place of what is open.", HelpName = "ID" };
        var folder = new Option<string?>("--out") { Description = "Folder to write the sheet to, for a spreadsheet, as a page and on paper.", HelpName = "FOLDER" };
        var command = new ExampleCommand(
            "settings",
            "Say everything that the machine's controllers have to be told: outputs, inputs, steps, currents, guards, gains, each with where it comes from and which later reading would change it.",
            "proveout settings samples/alderbrook --out paper")
        {
            options.Machine, build, options.Journal, folder, options.Json,
        };
        MachineRun.Of(command, terminal, options, async run =>
        {
            var view = run.Parse.GetValue(build) is { } wanted
                ? await OfBuildAsync(run, options, wanted)
                : Outcome.Of(await run.WaitAsync($"Running {run.Machine.Design.Name} live, output by output", () => SettingsSheet.Of(run.Machine)));
            if (view.Value is not { } sheet)
                return terminal.Refuse(view.Diagnostics, run.AsJson);
            return run.Parse.GetValue(folder) is { } into
                ? Write(terminal, sheet, into, run.AsJson)
                : run.Show(() => SettingsShape.Of(sheet), JsonShapes.Spread.SettingsShape, () => Show(terminal, sheet));
        });
        return command;
    }

    private static async Task<Outcome<SettingsView>> OfBuildAsync(MachineRun run, SharedOptions options, string wanted)
    {
        var opened = await Workplace.OpenExistingAsync(options.FilesOf(run.Parse), [run.Machine.Path], options.JournalOf(run.Parse), run.Cancellation);
        if (opened.Value is null)
            return Outcome.Refused<SettingsView>(opened.Diagnostics);
        await using var workplace = opened.Value;
        var found = await new BuildSearch(workplace.Journal).FindAsync(wanted, run.Cancellation);
        if (found.Value is null)
            return Outcome.Refused<SettingsView>(found.Diagnostics);
        return await workplace.Desks.Handover.SettingsOfBuildAsync(found.Value.Id.ToString(), run.Cancellation) is { } sheet
            ? Outcome.Of(sheet)
            : Outcome.Refused<SettingsView>(
            [
                new Diagnostic(
                    "build-of-another-machine",
                    new SourcePlace(run.Machine.Path, 0, 0),
                    $"Build {found.Value.Serial} was started from another machine than this one.",
                    "Give the file or folder that the build was started from."),
            ]);
    }

    private static int Write(Terminal terminal, SettingsView sheet, string folder, bool asJson)
    {
        var files = SettingsFiles.Of(sheet).Select(file => (Path: Path.Combine(folder, file.Name), file.Write)).ToArray();
        if (files.Select(file => SafeFile.TryWrite(file.Path, file.Write)).OfType<Diagnostic>().ToArray() is { Length: > 0 } problems)
            return terminal.Refuse(problems, asJson);
        if (asJson)
            terminal.Show(SettingsShape.Of(sheet), JsonShapes.Spread.SettingsShape);
        else
            foreach (var (path, _) in files)
                terminal.Say(path);
        return ExitCode.Fine;
    }

    private static void Show(Terminal terminal, SettingsView view)
    {
        terminal.Warn(SettingsView.Cautions);
        foreach (var group in view.Groups)
        {
            terminal.Say();
            terminal.Say($"{group.Title}. {group.Purpose}");
            foreach (var sentence in group.Common)
                terminal.Say(sentence);
            var sheet = new Sheet([.. group.Headings]);
            foreach (var row in group.Rows)
                sheet.Add([.. row]);
            terminal.Show(sheet);
        }

        ShowMistakes(terminal, view.Mistakes);
    }

    private static void ShowMistakes(Terminal terminal, MistakeTable table)
    {
        terminal.Say();
        terminal.Say($"When they are entered, try them: {table.Checks.Count} trials surely show {table.Mistakes.Count(row => row.CaughtBy.Count > 0)} of {table.Mistakes.Count} wrong settings that were thought of.");
        foreach (var setUp in table.SetUps)
        {
            terminal.Warn(setUp.Cautions);
            terminal.Say($"{setUp.Title}. {string.Join(" ", setUp.Instructions)}");
        }

        foreach (var check in table.Checks)
            terminal.Say($"{check.Check.Title}: {check.Check.Instruction}{(check.Check.Unit.Length > 0 ? $" Right: {check.Expected}." : "")}");
    }
}
