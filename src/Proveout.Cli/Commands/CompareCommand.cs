using System.CommandLine;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout compare A B</c>.</summary>
internal static class CompareCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var before = new Argument<string>("A") { Description = "The machine as it was: a file, a folder, or the name of a sample." };
        var after = new Argument<string>("B") { Description = "The machine as it is now; or what was built, as a folder with mistakes.yaml." };
        var build = new Option<string?>("--build") { Description = "A build of A: say of each of its readings whether it still holds.", HelpName = "ID" };
        var command = new ExampleCommand(
            "compare",
            "Say what differs between two revisions of a machine, which checks to repeat, and which readings still hold.",
            "proveout compare samples/pennywort samples/pennywort-as-wired",
            "proveout compare before/ after/ --build P-7")
        {
            before, after, build, options.Journal, options.Json,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            var (asJson, files) = (parse.GetValue(options.Json), options.FilesOf(parse));
            var (old, now) = (files.Read(Places.MachineAt(parse.GetValue(before)!)), Revision.Read(files, Places.MachineAt(parse.GetValue(after)!)));
            if (old.Value is null || now.Value is null)
                return terminal.Refuse([.. old.Diagnostics, .. now.Diagnostics], asJson);
            var was = await Planning.RunAsync(terminal, old.Value, onlyGreedy: false, cancellation);
            var comparison = RevisionComparison.Of(was, await Planning.RunAsync(terminal, now.Value, onlyGreedy: false, cancellation));
            var recorded = await RecordedAsync(terminal, files, options.JournalOf(parse), old.Value, parse.GetValue(build), comparison, cancellation);
            if (recorded.Value is not { } readings)
                return terminal.Refuse(recorded.Diagnostics, asJson);
            if (asJson)
                terminal.Show(ComparisonShape.Of(old.Value, now.Value, comparison, readings), JsonShapes.Spread.ComparisonShape);
            else
                ComparisonText.Show(terminal, comparison, readings);
            return comparison.Changes.Count > 0 ? ExitCode.Findings : ExitCode.Fine;
        });
        return command;
    }

    private static async Task<Outcome<IReadOnlyList<RecordedReading>>> RecordedAsync(
        Terminal terminal, MachineFiles files, string journal, LoadedMachine machine, string? wanted, RevisionComparison comparison, CancellationToken cancellation)
    {
        if (wanted is null)
            return Outcome.Of<IReadOnlyList<RecordedReading>>([]);
        var opened = await OpenedBuild.OpenAsync(terminal, files, [machine.Path], journal, wanted, cancellation);
        if (opened.Value is null)
            return Outcome.Refused<IReadOnlyList<RecordedReading>>(opened.Diagnostics);
        await using var build = opened.Value;
        return build.Build.MachineFingerprint == machine.Fingerprint
            ? Outcome.Of(comparison.Recorded(await build.StateAsync(cancellation)))
            : Outcome.Refused<IReadOnlyList<RecordedReading>>(
            [
                new Diagnostic(
                    "build-of-another-machine",
                    new SourcePlace(machine.Path, 0, 0),
                    $"Build {build.Build.Serial} was started from another state of a machine than this one.",
                    "Give as A the files that the build was started from."),
            ]);
    }
}
