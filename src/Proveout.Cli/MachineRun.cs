using System.CommandLine;
using System.Text.Json.Serialization.Metadata;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>One run of a command on a machine that could be read.</summary>
/// <param name="Terminal">Where it shows.</param>
/// <param name="Machine">The machine.</param>
/// <param name="Parse">The other words of the command line.</param>
/// <param name="AsJson">True when data was asked for.</param>
/// <param name="Cancellation">Stops it.</param>
internal sealed record MachineRun(Terminal Terminal, LoadedMachine Machine, ParseResult Parse, bool AsJson, CancellationToken Cancellation)
{
    /// <summary>Lets a command read its machine, refuse one that cannot be used, and go on with one that can.</summary>
    /// <param name="command">The command; it has the options that all share.</param>
    /// <param name="terminal">Where it shows.</param>
    /// <param name="options">The shared options.</param>
    /// <param name="run">What it does with the machine.</param>
    /// <param name="alsoJson">A further option that asks for data; null when there is none.</param>
    public static void Of(Command command, Terminal terminal, SharedOptions options, Func<MachineRun, Task<int>> run, Option<bool>? alsoJson = null) =>
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json) || (alsoJson is not null && parse.GetValue(alsoJson));
            var read = options.FilesOf(parse).Read(options.MachineOf(parse));
            return read.Value is { } machine
                ? await run(new MachineRun(terminal, machine, parse, asJson, cancellation))
                : terminal.Refuse(read.Diagnostics, asJson);
        });

    /// <summary>The machine with its plan.</summary>
    public Task<PlannedMachine> PlanAsync(bool onlyGreedy = false) => Planning.RunAsync(Terminal, Machine, onlyGreedy, Cancellation);

    /// <summary>Does what takes a while, and says so.</summary>
    public Task<T> WaitAsync<T>(string what, Func<T> work) => Progress.ShowAsync(Terminal, what, work, Cancellation);

    /// <summary>Shows the data or the words, whichever was asked for.</summary>
    public int Show<T>(Func<T> data, JsonTypeInfo<T> shape, Action words, int exit = ExitCode.Fine)
    {
        if (AsJson)
            Terminal.Show(data(), shape);
        else
            words();
        return exit;
    }
}
