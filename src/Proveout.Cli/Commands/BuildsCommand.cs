using System.CommandLine;
using System.Globalization;
using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout builds</c>: lists builds, or puts those of one machine side by side.</summary>
internal static class BuildsCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var compare = new Option<string?>("--compare") { Description = "Put all builds of this machine side by side: a machine file, its folder, or the name of a sample.", HelpName = "MACHINE" };
        var find = new Option<string?>("--find") { Description = "Only builds whose serial number, builder or machine holds this.", HelpName = "TEXT" };
        var command = new ExampleCommand(
            "builds",
            "List the builds of a journal, newest first; with --compare, put those of one machine side by side.",
            "proveout builds --journal workshop.db",
            "proveout builds --compare samples/pennywort --json")
        {
            compare, find, options.Journal, options.Json,
        };
        command.SetAction((parse, cancellation) => parse.GetValue(compare) is { } machine
            ? CompareAsync(new(terminal, options, parse, cancellation), Places.MachineAt(machine), parse.GetValue(find) ?? "")
            : ListAsync(new(terminal, options, parse, cancellation), parse.GetValue(find) ?? ""));
        return command;
    }

    private static async Task<int> ListAsync(Run run, string find)
    {
        var opened = await Workplace.OpenExistingAsync(run.Options.FilesOf(run.Parse), [], run.Options.JournalOf(run.Parse), run.Cancellation);
        if (opened.Value is null)
            return run.Terminal.Refuse(opened.Diagnostics, run.AsJson);
        await using var workplace = opened.Value;
        Build[] builds = [.. BuildSearch.Matching(await workplace.Journal.ListBuildsAsync(run.Cancellation), find).Reverse()];
        if (run.AsJson)
        {
            run.Terminal.Show(new BuildsShape("proveout-builds 1", [.. builds.Select(BuildShape.Of)]), JsonShapes.Spread.BuildsShape);
            return ExitCode.Fine;
        }

        var sheet = new Sheet("Serial", "Machine", "Builder", "Started (UTC)", "Identifier");
        foreach (var build in builds)
            sheet.Add(build.Serial, build.MachineName, build.Builder, build.Started.UtcDateTime.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture), build.Id.ToString());
        run.Terminal.Show(sheet);
        return ExitCode.Fine;
    }

    private static async Task<int> CompareAsync(Run run, string machine, string find)
    {
        var files = run.Options.FilesOf(run.Parse);
        var read = files.Read(machine);
        if (read.Value is not { } loaded)
            return run.Terminal.Refuse(read.Diagnostics, run.AsJson);
        var opened = await Workplace.OpenExistingAsync(files, [machine, .. Places.SampleMachines], run.Options.JournalOf(run.Parse), run.Cancellation);
        if (opened.Value is null)
            return run.Terminal.Refuse(opened.Diagnostics, run.AsJson);
        await using var workplace = opened.Value;
        await Planning.RunAsync(run.Terminal, loaded, onlyGreedy: false, run.Cancellation);
        var desk = workplace.Desks.Builds;
        var first = (await desk.OfMachineAsync(loaded.Id, new(find), run.Cancellation))!;
        var rows = await AllPages(async page => (await desk.OfMachineAsync(loaded.Id, new(find, page), run.Cancellation))!.Builds);
        var spreads = await AllPages(async page => (await desk.OfMachineAsync(loaded.Id, new(ChecksPage: page), run.Cancellation))!.Checks);
        if (run.AsJson)
            run.Terminal.Show(MachineBuildsShape.Of(first, rows, spreads), JsonShapes.Spread.MachineBuildsShape);
        else
            BuildsText.Show(run.Terminal, first, rows, spreads);
        return first.ApartCount > 0 || first.Unreadable.Count > 0 ? ExitCode.Findings : ExitCode.Fine;
    }

    private static async Task<IReadOnlyList<T>> AllPages<T>(Func<int, Task<Paged<T>>> read)
    {
        var all = new List<T>();
        for (var page = 1; ; page++)
        {
            var part = await read(page);
            all.AddRange(part.Items);
            if (page >= part.Pages)
                return all;
        }
    }

    private sealed record Run(Terminal Terminal, SharedOptions Options, ParseResult Parse, CancellationToken Cancellation)
    {
        public bool AsJson => Parse.GetValue(Options.Json);
    }
}
