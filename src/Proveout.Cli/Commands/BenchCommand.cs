using System.CommandLine;

namespace Proveout.Cli;

/// <summary><c>proveout bench</c>: starts a build of a machine, or goes on with one.</summary>
internal static class BenchCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var subject = new Argument<string>("MACHINE|BUILD") { Description = "A machine to start a build of, or a build to go on with." };
        var command = new ExampleCommand(
            "bench",
            "Walk through the checks of a build in the terminal: one check at a time, judged as it is typed.",
            "proveout bench samples/pennywort --serial P-7 --builder \"Mara Lindt\"",
            "proveout bench P-7")
        {
            subject, options.Serial, options.Builder, options.Journal, options.Machines,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            var files = options.FilesOf(parse);
            var journal = options.JournalOf(parse);
            var wanted = parse.GetValue(subject)!;
            var path = Places.MachineAt(wanted);
            var opened = Path.Exists(path)
                ? await BenchStart.OpenAsync(terminal, files, path, journal, parse.GetValue(options.Serial), parse.GetValue(options.Builder), cancellation)
                : await OpenedBuild.OpenAsync(terminal, files, options.MachinesOf(parse), journal, wanted, cancellation);
            if (opened.Value is null)
                return terminal.Refuse(opened.Diagnostics);
            await using var build = opened.Value;
            return await new BenchWalk(build, terminal, parse.GetValue(options.Builder) ?? build.Build.Builder).RunAsync(cancellation);
        });
        return command;
    }
}
